/** How each kind of block is set. */
export const blocks = `
// Drawn marks need no glyph of any font; the words beside them say the same.
#let mark(tone) = {
  let c = hues.at(tone, default: soft)
  let shape = if tone == "good" { circle(radius: 2.3pt, fill: c, stroke: none) }
    else if tone == "over" or tone == "stop" { polygon(fill: c, (0pt, 4.8pt), (5.4pt, 4.8pt), (2.7pt, 0pt)) }
    else if tone == "under" { polygon(fill: c, (0pt, 0pt), (5.4pt, 0pt), (2.7pt, 4.8pt)) }
    else if tone == "unsure" or tone == "warn" { polygon(fill: none, stroke: 1pt + c, (2.6pt, 0pt), (5.2pt, 2.6pt), (2.6pt, 5.2pt), (0pt, 2.6pt)) }
    else if tone == "note" { circle(radius: 2.2pt, fill: none, stroke: 1pt + c) }
    else { rect(width: 5pt, height: 1.2pt, fill: c, stroke: none) }
  pdf.artifact(box(width: 9pt, shape))
}

#let show-paragraph(b) = par(b.text)

#let show-facts(b) = block(breakable: b.items.len() > 15, width: 100%, grid(
  columns: (38mm, 1fr), column-gutter: 5mm, row-gutter: 0.65em,
  ..b.items.map(item => (text(fill: soft, item.label), item.value)).flatten(),
))

#let show-notice(b) = {
  let c = hues.at(b.tone, default: soft)
  block(
    width: 100%, fill: tint, inset: (left: 12pt, right: 10pt, y: 9pt), above: 1em, below: 1em,
    stroke: (left: 3pt + c), breakable: false,
  )[
    #mark(b.tone)#text(weight: "semibold", size: 11.5pt, b.title)
    #if b.lines.len() > 0 { list(marker: text(fill: soft, "–"), indent: 9pt, body-indent: 4pt, spacing: 0.7em, ..b.lines) }
  ]
}

#let show-list(b) = {
  block(sticky: true, above: 1.1em, below: 0.7em, text(weight: "semibold", b.title))
  set list(spacing: 0.6em, indent: 0pt, body-indent: 6pt)
  set enum(spacing: 0.6em, indent: 0pt, body-indent: 6pt)
  if b.ordered { enum(..b.items) } else { list(..b.items) }
}

#let show-steps(b) = {
  block(sticky: true, above: 1.3em, below: 0.7em, text(weight: "semibold", b.title))
  for (i, step) in b.items.enumerate() {
    block(breakable: false, above: 0.8em, below: 0.8em, width: 100%, grid(
      columns: (7mm, 1fr),
      text(weight: "semibold", str(i + 1) + "."),
      {
        step.text
        for caution in step.cautions {
          block(above: 0.5em, below: 0.3em, inset: (left: 7pt, y: 1pt), stroke: (left: 2pt + hues.stop))[#mark("stop")#text(weight: "semibold", fill: hues.stop, b.cautionLabel + ":") #caution]
        }
      },
    ))
  }
}

#let show-cell(cell) = {
  let body = if cell.at("struck", default: false) { text(fill: soft, strike(stroke: 0.6pt + soft, cell.text)) } else { cell.text }
  let detail = if "detail" in cell { linebreak() + text(size: 8.5pt, fill: soft, cell.detail) }
  if "tone" in cell { grid(columns: (9pt, 1fr), box(height: 0.66em, align(horizon, mark(cell.tone))), text(weight: "semibold", body) + detail) } else { body + detail }
}

#let table-caption(b, above) = block(above: above, below: 0.55em, sticky: true, text(size: 9.5pt, fill: soft, b.caption))

#let table-rows(b, rows) = {
  let aligns = b.columns.map(c => if c.align == "end" { right } else { left })
  set text(size: 9.5pt)
  set par(leading: 0.45em)
  show table.cell.where(y: 0): set text(size: 8.8pt, fill: soft, weight: "semibold")
  table(
    columns: b.columns.map(c => c.weight * 1fr),
    align: (x, y) => aligns.at(x) + (if y == 0 { bottom } else { top }),
    inset: (x: 4pt, y: 4.6pt),
    stroke: (x, y) => (top: if y == 0 { 0.8pt + ink } else if y == 1 { 0.6pt + ink } else { 0.4pt + hair }),
    table.header(repeat: true, ..b.columns.map(c => c.label)),
    ..rows.map(row => row.enumerate().map(((i, cell)) => {
      let numeric = b.columns.at(i).align == "end"
      table.cell(breakable: false, { set text(number-width: "tabular") if numeric; show-cell(cell) })
    })).flatten(),
    table.hline(stroke: 0.8pt + ink),
  )
}

// Room for this much or the next page: an empty block of its height, which is then gone back over. What follows it brings no space of its own above.
#let keep-room(above, body) = context {
  let height = measure(width: text-width, body).height
  block(height: height, width: 100%, breakable: false, above: above, below: 0pt)
  v(-height)
}

#let show-table(b) = {
  // A short table is easier to read in one piece; a long one breaks and repeats its head; where it begins, two rows stand below that.
  let long = b.rows.len() > 9
  if long { keep-room(1.2em, table-caption(b, 0pt) + table-rows(b, b.rows.slice(0, 2))) }
  table-caption(b, if long { 0pt } else { 1.2em })
  block(below: 0.6em, breakable: long, table-rows(b, b.rows))
  for note in b.notes { block(above: 0.35em, below: 0.35em, text(size: 8.8pt, fill: soft, note)) }
}

// At this width two views of a driveline share a page.
#let show-figure(b) = block(breakable: false, above: 1.2em, below: 1.2em, {
  figure(
    image(bytes(b.svg), format: "svg", width: 88%, alt: b.alt),
    caption: none, alt: b.alt,
  )
  v(-0.4em)
  text(size: 9.5pt, fill: soft, b.caption)
})

#let show-findings(b) = for item in b.items {
  block(breakable: false, above: 1.1em, below: 0.9em, width: 100%, grid(
    columns: (7mm, 1fr), column-gutter: 1mm,
    text(weight: "semibold", str(item.number)),
    {
      block(spacing: 0.55em)[#mark(item.severity)#text(fill: hues.at(item.severity), weight: "semibold", item.severityLabel): #text(weight: "semibold", item.title)]
      block(spacing: 0.55em, item.says)
      block(spacing: 0.55em)[#text(weight: "semibold", b.doNextLabel): #item.doNext]
      if item.place != "" { block(spacing: 0.55em, text(size: 8.5pt, fill: soft, item.place)) }
    },
  ))
}

#let show-writing(b) = block(breakable: false, sticky: true, above: 1.2em, {
  text(fill: soft, b.label)
  for _ in range(b.lines) { v(8.5mm, weak: false); pdf.artifact(line(length: 100%, stroke: 0.4pt + rule)); v(-1em) }
})

#let show-signature(b) = block(breakable: false, above: 20mm, grid(
  columns: (2fr, 1fr), column-gutter: 10mm,
  ..b.labels.map(label => { pdf.artifact(line(length: 100%, stroke: 0.6pt + ink)); v(-0.4em); text(size: 9pt, fill: soft, label) }),
))

#let show-block(b) = {
  if b.kind == "paragraph" { show-paragraph(b) }
  else if b.kind == "notice" { show-notice(b) }
  else if b.kind == "facts" { show-facts(b) }
  else if b.kind == "steps" { show-steps(b) }
  else if b.kind == "table" { show-table(b) }
  else if b.kind == "figure" { show-figure(b) }
  else if b.kind == "list" { show-list(b) }
  else if b.kind == "findings" { show-findings(b) }
  else if b.kind == "writing" { show-writing(b) }
  else if b.kind == "signature" { show-signature(b) }
  else { panic("unknown block " + b.kind) }
}

#let show-section(section) = {
  let body = {
    heading(level: section.level, section.title)
    for b in section.blocks { show-block(b) }
  }
  // What is to be signed stands on one page with the signature.
  if section.blocks.any(b => b.kind == "signature") { block(breakable: false, width: 100%, above: 2.4em, body) } else { body }
}

#show-facts(content.head)
#if printed { block(above: 1em, text(size: 9pt, fill: soft, content.codesShown)) }
`;

/** Page, type and running lines. */
export const page = `
#let content = json(bytes(sys.inputs.content))
#let paper = sys.inputs.paper
#let day = content.date.slice(0, 10).split("-").map(int)

#let ink = rgb("#1b1f23")
#let soft = rgb("#5a6168")
#let rule = rgb("#b9bfc5")
#let hair = rgb("#dfe3e6")
#let tint = rgb("#f4f6f7")
// Okabe-Ito: told apart by eyes of every kind; a mark and a word always stand beside them.
#let hues = (
  good: rgb("#00664b"), over: rgb("#a84300"), under: rgb("#a84300"),
  unsure: rgb("#7a5c00"), "none": soft, stop: rgb("#a84300"), warn: rgb("#7a5c00"), note: rgb("#005a8c"),
)

#let printed = content.codes.len() > 0
#set document(
  title: content.title,
  date: datetime(year: day.at(0), month: day.at(1), day: day.at(2)),
  description: content.kind,
)
#set text(font: ("Libertinus Serif", "DejaVu Sans Mono"), fallback: false, size: 10.5pt, fill: ink, lang: content.language, number-type: "lining", hyphenate: false)
#set par(leading: 0.58em, spacing: 0.85em, justify: false)
#let (left-margin, right-margin) = (20mm, 18mm)
#let text-width = (a4: 210mm, us-letter: 215.9mm).at(paper) - left-margin - right-margin
#set page(
  paper: paper,
  margin: (top: 24mm, bottom: 22mm, left: left-margin, right: right-margin),
  header: context {
    if counter(page).get().first() > 1 {
      set text(size: 8.5pt, fill: soft)
      grid(columns: (1fr, auto), column-gutter: 8mm, content.title, content.dateText)
      v(-0.4em)
      line(length: 100%, stroke: 0.4pt + rule)
    }
  },
  footer: context {
    set text(size: 8.5pt, fill: soft)
    let now = counter(page).get().first()
    let all = counter(page).final().first()
    grid(columns: (1fr, auto), content.tool, content.pageOf.page + " " + str(now) + " " + content.pageOf.of + " " + str(all))
  },
)
// A unit is never torn apart.
#show "rad/s²": box
#set heading(numbering: none)
#show heading: set text(hyphenate: false)
#show heading.where(level: 1): it => block(above: 1.9em, below: 0.9em, sticky: true, breakable: false, width: 100%)[
  #set text(size: 15pt, weight: "semibold")
  #it.body
  #v(-0.55em)
  #line(length: 100%, stroke: 0.8pt + ink)
]
#show heading.where(level: 2): it => block(above: 1.6em, below: 0.75em, sticky: true, breakable: false, text(size: 12pt, weight: "semibold", it.body))
#show heading.where(level: 3): it => block(above: 1.2em, below: 0.6em, sticky: true, breakable: false, text(size: 10.5pt, weight: "semibold", it.body))

#text(size: 9.5pt, fill: soft, tracking: 0.06em, content.kind)
#v(-0.3em)
#block(below: 1em, title(text(size: 22pt, weight: "semibold", content.title)))
`;

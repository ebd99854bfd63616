/** One style sheet for screen, phone and paper. Colours of the verdicts: Okabe and Ito's set, darkened or lightened for contrast; a mark and a word stand beside each. */
export const STYLE = `
:root{color-scheme:light dark;--paper:#fff;--ink:#1b1f23;--soft:#545b62;--rule:#c3c9ce;--hair:#e2e6e9;--tint:#f4f6f7;--good:#00664b;--bad:#a84300;--unsure:#7a5c00;--note:#005a8c}
@media screen and (prefers-color-scheme:dark){:root{--paper:#14191e;--ink:#e8edf1;--soft:#a6b1bb;--rule:#46515b;--hair:#2b343c;--tint:#1c232a;--good:#2fc497;--bad:#f0803c;--unsure:#e6b13c;--note:#6cbcec}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1.0625rem/1.5 system-ui,"Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif}
main,footer{max-width:54rem;margin:0 auto;padding:0 1.25rem}
main{padding-top:2rem}
.kind{margin:0;color:var(--soft);letter-spacing:.05em;font-size:.9rem}
h1{font-size:1.75rem;line-height:1.2;margin:.2rem 0 1.2rem;overflow-wrap:anywhere}
h2{font-size:1.35rem;line-height:1.25;margin:2.8rem 0 1rem;padding-bottom:.4rem;border-bottom:2px solid var(--ink)}
h3{font-size:1.1rem;margin:2rem 0 .7rem}
h4{font-size:1rem;margin:1.4rem 0 .4rem}
p{margin:.7rem 0}
p,li,dd,td,th{overflow-wrap:break-word}
dl{display:grid;grid-template-columns:minmax(8rem,14rem) 1fr;gap:.35rem 1.2rem;margin:.6rem 0}
dt{color:var(--soft)}dd{margin:0}
ul,ol{padding-left:1.4rem;margin:.4rem 0}li{margin:.35rem 0}
.notice{background:var(--tint);border-left:5px solid var(--c);padding:.8rem 1rem;margin:1.1rem 0}
.notice h3{margin:0;font-size:1.1rem}
.good{--c:var(--good)}.over,.under,.stop{--c:var(--bad)}.unsure,.warn{--c:var(--unsure)}.note{--c:var(--note)}.none{--c:var(--soft)}
.mark{color:var(--c);display:inline-block;width:1.1em}
.verdict{font-weight:600;display:inline-grid;grid-template-columns:1.1em 1fr}
td small,th small{display:block;color:var(--soft);font-size:.87em;font-weight:400}
.verdict+small{padding-left:1.27em}
.steps>li{margin:.9rem 0}.steps p{margin:.25rem 0}
.steps .caution{--c:var(--bad);border-left:3px solid var(--bad);padding:.1rem 0 .1rem .7rem}
.steps .caution strong{color:var(--bad)}
.scroll{overflow-x:auto;margin:1.1rem 0 .4rem}
table{border-collapse:collapse;width:100%;font-size:.95rem;border-bottom:2px solid var(--ink)}
caption{text-align:left;color:var(--soft);padding-bottom:.4rem}
th,td{padding:.45rem .5rem;vertical-align:top;text-align:left;border-top:1px solid var(--hair);font-weight:400}
thead th{border-top:2px solid var(--ink);border-bottom:1px solid var(--ink);color:var(--soft);font-weight:600;font-size:.87rem;vertical-align:bottom}
.end{text-align:right;font-variant-numeric:tabular-nums}
.small{font-size:.87rem;color:var(--soft);margin:.25rem 0}
s{color:var(--soft)}
figure{margin:1.4rem 0}
figure>div{background:#fff;border:1px solid var(--hair);border-radius:4px;overflow-x:auto}
figure svg{display:block;width:100%;height:auto;min-width:34rem}
figcaption{color:var(--soft);font-size:.93rem;margin-top:.4rem}
.findings{list-style:none;padding:0}
.findings>li{display:grid;grid-template-columns:2.2rem 1fr;margin:1.3rem 0}
.findings h4{margin:0}.findings p{margin:.25rem 0}
.number{font-weight:600}
.severity{color:var(--c)}
.writing{border:1px solid var(--rule);min-height:11rem;padding:.5rem .8rem;color:var(--soft);margin:1.1rem 0}
.signature{display:grid;grid-template-columns:2fr 1fr;gap:2rem;margin:5rem 0 2rem;color:var(--soft);font-size:.93rem}
.signature span{border-top:1px solid var(--ink);padding-top:.3rem}
footer{color:var(--soft);font-size:.87rem;padding-top:1.5rem;padding-bottom:2rem}
@media (max-width:40rem){
dl{grid-template-columns:1fr;gap:0}dd{margin-bottom:.6rem}
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
table,caption,tbody,tr,th,td{display:block}
tbody tr{padding:.6rem 0;border-top:1px solid var(--rule)}
tbody th,tbody td{border:0;padding:.12rem 0;text-align:left}
tbody th{font-weight:600}
tbody td{display:grid;grid-template-columns:8.5rem minmax(0,1fr);gap:.6rem}
tbody th.end,tbody td.end{text-align:left}
tbody td::before{content:attr(data-label);color:var(--soft)}
tbody td.empty{display:none}
figure svg{min-width:30rem}
.signature{grid-template-columns:1fr;gap:4rem}
}
@page{margin:18mm 16mm}
@media print{
body{font-size:10.5pt;line-height:1.4}main,footer{max-width:none;padding:0}
h1,h2,h3,h4{break-after:avoid}h2{margin-top:1.8rem}
.notice,.findings>li,.steps>li,figure,tr,.writing,.signature,.mark{break-inside:avoid}
caption{break-after:avoid}thead{display:table-header-group}tbody{break-before:avoid}.scroll,figure>div{overflow:visible}figure svg{min-width:0}
.notice,figure>div{print-color-adjust:exact;-webkit-print-color-adjust:exact}
table{font-size:9.5pt}p,li{orphans:3;widows:3}
}
`;

#include "report/html_style.h"

#include "report/card_style.h"

/* Sizes go by a step of 1.2 from the body's; print sets the body in points. */
static const char SHEET[] =
    ":root{--ink:#1b1b19;--soft:#55534c;--line:#8d897e;--faint:#d8d4c8;--paper:#fffefb;"
    "--desk:#eceae3;--fail:#8c1d18;--open:#1d4f73;--warn:#6b4700}\n"
    "*{box-sizing:border-box}\n"
    "html{-webkit-text-size-adjust:100%}\n"
    "body{margin:0 auto;max-width:54rem;padding:1.5rem 2.25rem 2.5rem;background:var(--paper);"
    "color:var(--ink);font:1rem/1.45 system-ui,-apple-system,\"Segoe UI\",\"Noto Sans\","
    "\"Liberation Sans\",sans-serif;overflow-wrap:anywhere}\n"
    "html{background:var(--desk)}\n"
    "h1,h2,h3{line-height:1.2;margin:0}\n"
    "h1{font-size:1.728rem;margin:.1rem 0 .6rem}\n"
    "h2{font-size:1.2rem;margin:2rem 0 .5rem;padding-top:.5rem;border-top:3px solid var(--ink)}\n"
    "h3{font-size:1rem;margin:1.1rem 0 .25rem}\n"
    "p{margin:.25rem 0}\n"
    "a{color:var(--ink)}\n"
    "a:focus-visible{outline:3px solid var(--open);outline-offset:2px}\n"
    ".skip{position:absolute;left:-999rem}\n"
    ".skip:focus{left:.5rem;top:.5rem;background:var(--paper);padding:.5rem .75rem;"
    "border:2px solid var(--ink);z-index:1}\n"
    ".unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);"
    "white-space:nowrap}\n"
    ".what{font-size:.833rem;letter-spacing:.04em;color:var(--soft)}\n"
    ".gloss,.cite,.rule,.print{color:var(--soft);font-size:.833rem}\n"
    ".rule{font-weight:400;white-space:normal}\n"
    ".invented{border:2px dashed var(--ink);padding:.3rem .6rem;margin:.5rem 0}\n"
    "dl{margin:0}\n"
    "dl>div{display:grid;grid-template-columns:6.5rem 1fr;gap:0 .75rem;padding:.1rem 0}\n"
    "dt{color:var(--soft)}\n"
    "dd{margin:0;min-width:0;grid-column:2}\n"
    "nav ul{display:flex;flex-wrap:wrap;gap:.35rem 1.25rem;list-style:none;margin:1rem 0 0;"
    "padding:.5rem 0;border-top:1px solid var(--line);border-bottom:1px solid var(--line)}\n"
    "nav a{display:inline-block;padding:.2rem 0}\n"
    ".mark{display:inline-block;min-width:3.4rem;padding:0 .3rem;text-align:center;"
    "font-size:.833rem;font-weight:700;line-height:1.35;border:1px solid currentColor}\n"
    ".fail,.broken{border:3px double currentColor;color:var(--fail)}\n"
    ".open{border:1px dashed currentColor;color:var(--open)}\n"
    ".warn{border:2px solid currentColor;color:var(--warn)}\n"
    ".na,.pass{font-weight:400}\n"
    ".finding{padding:.2rem 0 .7rem;border-bottom:1px solid var(--faint);break-inside:avoid}\n"
    ".finding>dl,.finding>p{margin-left:.1rem}\n"
    ".mend dd{font-weight:600}\n"
    "table{border-collapse:collapse;width:100%;table-layout:fixed}\n"
    "caption{text-align:left;color:var(--soft);font-size:.833rem;padding:.1rem 0 .3rem}\n"
    "th,td{text-align:left;vertical-align:top;padding:.3rem .75rem .3rem 0;"
    "border-bottom:1px solid var(--faint)}\n"
    "thead th{border-bottom:1px solid var(--ink);font-size:.833rem}\n"
    "tbody th{font-weight:600}\n"
    ".count col:nth-child(1),.count col:nth-child(2){width:6rem}\n"
    ".brief col:nth-child(1){width:36%}.brief col:nth-child(3){width:26%}\n"
    ".brief .rule{display:block}\n"
    ".care li,.ask li{margin:.3rem 0}\n"
    ".care ul,.ask ol{padding-left:1.25rem;margin:.3rem 0}\n"
    "figure{margin:1rem 0;break-inside:avoid}\n"
    "figure svg{max-width:100%;height:auto;display:block}\n"
    "figcaption{font-size:.833rem;color:var(--soft);padding-top:.2rem}\n"
    ".sheets{columns:20rem 2;column-gap:1.5rem}\n"
    ".sheets figure{margin:0 0 1.2rem}\n"
    "footer{margin-top:2rem;padding-top:.6rem;border-top:1px solid var(--ink)}\n";

/* The one screen: each part under a word in a frame of its own, so that what fails is
 * told from what is met without color. */
static const char SCREEN[] =
    ".part>h2{display:flex;flex-wrap:wrap;gap:.1rem .75rem;align-items:baseline;margin:1.2rem 0 "
    ".3rem;padding-top:.6rem;border-top-width:1px}\n"
    ".word{font-size:1rem;letter-spacing:.06em;text-transform:uppercase;padding:0 .4rem;"
    "border:1px solid transparent}\n"
    ".word.fix,.word.broken{border:4px double currentColor;color:var(--fail)}\n"
    ".word.look{border:2px solid currentColor;color:var(--warn)}\n"
    ".word.answer,.word.unknown{border:2px dashed currentColor;color:var(--open)}\n"
    ".word.later{border:1px dotted currentColor}\n"
    ".word.met,.word.confirm,.word.care{padding-left:0}\n"
    ".about{font-size:1rem;font-weight:400}\n"
    ".blocks{padding-left:1.7rem;margin:.2rem 0}\n"
    ".blocks>li{margin:.5rem 0;break-inside:avoid}\n"
    ".blocks>li::marker{font-weight:700}\n"
    ".blocks h3,.part>h3{margin:.35rem 0 .1rem}\n"
    ".blocks dl>div{grid-template-columns:4rem 1fr}\n"
    ".lines{padding-left:1.2rem;margin:.2rem 0}\n"
    ".lines li{margin:.15rem 0}\n"
    ".figures col:nth-child(1){width:33%}.figures col:nth-child(3){width:22%}"
    ".figures col:nth-child(4){width:13%}\n"
    ".figures tbody th{font-weight:400}\n"
    ".screen footer{margin-top:1.2rem}\n";

/* Tables of class "stack" become blocks; a cell's label comes from data-label. */
static const char NARROW[] =
    "@media screen and (max-width:40rem){\n"
    "body{padding:1rem .9rem 2rem}\n"
    "h1{font-size:1.44rem}\n"
    "dl>div{grid-template-columns:5.5rem 1fr}\n"
    ".count col:nth-child(1){width:5.6rem}.count col:nth-child(2){width:5.4rem}\n"
    ".stack,.stack tbody,.stack tr,.stack th,.stack td,.stack caption{display:block;width:auto}\n"
    ".stack colgroup,.stack td:empty{display:none}\n"
    ".stack thead{position:absolute;left:-999rem}\n"
    ".stack tbody tr{padding:.4rem 0;border-bottom:1px solid var(--line)}\n"
    ".stack th,.stack td{padding:.1rem 0;border:0}\n"
    "td[data-label]::before{content:attr(data-label) \" \";color:var(--soft);"
    "font-size:.833rem;font-weight:400}\n"
    "}\n";

/* Black only, in points, on letter paper; rows and findings are not parted. */
static const char PRINT[] =
    "@page{size:letter;margin:.38in .5in}\n"
    "@media print{\n"
    ":root{--ink:#000;--soft:#333;--line:#666;--faint:#999;--fail:#000;--open:#000;--warn:#000}\n"
    "html,body{background:none}\n"
    "body{max-width:none;padding:0;font-size:10pt;line-height:1.35}\n"
    "h1{font-size:15pt}h2{font-size:12pt;margin-top:14pt;break-after:avoid}\n"
    "h3{font-size:10pt;break-after:avoid}\n"
    ".what,.gloss,.cite,.rule,.print,.mark,caption,thead th{font-size:8.3pt}\n"
    ".skip,nav{display:none}\n"
    "a{text-decoration:none}\n"
    "p,li{orphans:2;widows:2}\n"
    "thead{display:table-header-group}\n"
    "tr{break-inside:avoid}\n"
    ".part>h2{margin:8pt 0 2pt;padding-top:4pt}.word,.about{font-size:10.5pt}\n"
    ".blocks>li{margin:4pt 0}.part p,.lines li{margin:1pt 0}\n"
    ".screen dl>div{padding:0}.screen footer{margin-top:8pt}\n"
    ".sheets figure{margin:0 0 8pt}\n"
    "}\n";

/* In this order: what narrows for a telephone and what prints goes over what is on a screen. */
void html_style(struct text *out)
{
    text_add(out, "<style>\n");
    text_add(out, SHEET);
    text_add(out, SCREEN);
    text_add(out, NARROW);
    text_add(out, PRINT);
    card_style(out);
    text_add(out, "</style>\n");
}

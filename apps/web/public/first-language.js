// Runs before the app's own scripts, which load the language that the page names. The kit's choice was kept here for this start
// (src/shell/speak-language.ts); the kit itself decides as soon as it is read.
(() => {
  let chosen = null;
  try {
    chosen = localStorage.getItem('larkhold-language');
  } catch {
    // a browser that keeps nothing
  }
  const locale = chosen ?? navigator.language;
  document.documentElement.lang = locale;
  // In the built page: its file is fetched along with the rest.
  const parts = document.currentScript.dataset;
  const part = parts[locale.split('-')[0].toLowerCase()] ?? parts.en;
  if (part) document.head.append(Object.assign(document.createElement('link'), { rel: 'modulepreload', href: part }));
})();

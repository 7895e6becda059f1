import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import ts from 'typescript';

/** A text that a person would read, found outside of packages/words. */
export interface GluedWords {
  file: string;
  line: number;
  text: string;
}

/** Attributes that are read out or shown. */
const SPOKEN = /\s(?:aria-label|aria-description|title|placeholder|label|alt|heading|legend|caption)="([^"]*)"/g;
/** A string that reads as words: two words beside each other, or one with a capital. */
const WORDS = /[A-Za-z’']{2,}[,.:;]? [A-Za-z’']{2,}|^[A-Z][a-z]{2,}[.:?]?$/;
/** Calls whose strings a developer reads, or no one. */
const NOT_READ =
  /^(say|pieces|querySelector(All)?|closest|matches|RangeError|TypeError|Error|SyntaxError|DOMException|addEventListener|removeEventListener|getContext|css|RegExp|matchMedia|setProperty)$/;

/** Numbers, dates and lists written for people are a locale's, and `packages/words` knows it. */
const FORMATTED = /^toLocale(String|DateString|TimeString)$|^(Number|DateTime|List)Format$|^PluralRules$/;
const LIST = /^\s?([,;、،]|and|or|und|oder) $/;

/**
 * The texts of a room that are not messages.
 * @param root the repository
 * @param folders rooms, from the root
 * @returns every place, in order
 */
export function findGluedWords(root: string, folders: readonly string[]): GluedWords[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !/\.(test|browser|d)\.ts$|trial[-/]|-acceptance\.ts$/.test(name))
      .sort()
      .flatMap((name) => inFile(join(root, folder, name), relative(root, join(root, folder, name)))),
  );
}

function inFile(path: string, file: string): GluedWords[] {
  const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: GluedWords[] = [];
  const note = (node: ts.Node, text: string): void => {
    const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
    found.push({ file, line, text: text.replace(/\s+/g, ' ').trim() });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isTaggedTemplateExpression(node)) {
      const tag = node.tag.getText(source);
      if (/^(css|unsafeCSS)$/.test(tag)) return;
      if (/^(html|svg)$/.test(tag)) for (const text of textsOf(node.template, source)) note(node, text);
      if (ts.isTemplateExpression(node.template))
        for (const span of node.template.templateSpans) visit(span.expression);
      return;
    }
    if (isFormatted(node, source) || isPlural(node)) note(node, node.getText(source));
    if ((ts.isCallExpression(node) || ts.isNewExpression(node)) && isNotRead(node.expression, source)) {
      for (const argument of node.arguments ?? [])
        if (!ts.isStringLiteralLike(argument) && !ts.isTemplateExpression(argument)) visit(argument);
      return;
    }
    if (ts.isTemplateExpression(node)) {
      const text = [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('{}');
      if (/[A-Za-z’']{2,}[,.:;]? [A-Za-z’'{]{2,}|\{\} [A-Za-z]{2,}[ .,]|[·–] [a-z]{2,}|^[A-Z][a-z]+ \{\}/.test(text))
        note(node, text);
      const said = node.templateSpans.map(({ expression }) => expression.getText(source)).filter(isSaid);
      // Two messages in a row have one order in every language.
      if (said.length > 1) note(node, said.join(' '));
      for (const span of node.templateSpans) visit(span.expression);
      return;
    }
    if (ts.isStringLiteralLike(node)) {
      if (WORDS.test(node.text) && !isName(node)) note(node, node.text);
      return;
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const isSaid = (code: string): boolean => /^(\w+\.)?say\(/.test(code);

/** `things.join(', ')`, `n.toLocaleString()`, `new Intl.ListFormat()`. */
function isFormatted(node: ts.Node, source: ts.SourceFile): boolean {
  if (!ts.isCallExpression(node) && !ts.isNewExpression(node)) return false;
  if (!ts.isPropertyAccessExpression(node.expression)) return false;
  const name = node.expression.name.getText(source);
  const [first] = node.arguments ?? [];
  return FORMATTED.test(name) || (name === 'join' && !!first && ts.isStringLiteralLike(first) && LIST.test(first.text));
}

/** `n === 1 ? '' : 's'`: other languages have other plurals. */
function isPlural(node: ts.Node): boolean {
  if (!ts.isConditionalExpression(node)) return false;
  const ends = [node.whenTrue, node.whenFalse].map((end) => (ts.isStringLiteralLike(end) ? end.text : '-'));
  return ends.includes('') && ends.some((end) => /^(s|es|e|en|n)$/.test(end));
}

function isNotRead(callee: ts.Expression, source: ts.SourceFile): boolean {
  const name = ts.isPropertyAccessExpression(callee) ? callee.name.text : callee.getText(source);
  return NOT_READ.test(name);
}

/** Keys of objects, comparisons, elements of unions: names, not words. */
function isName({ parent }: ts.Node): boolean {
  return (
    (ts.isPropertyAssignment(parent) && ts.isStringLiteralLike(parent.name) && parent.name === parent.initializer) ||
    (ts.isBinaryExpression(parent) && /^[!=]==?$/.test(parent.operatorToken.getText())) ||
    ts.isCaseClause(parent) ||
    ts.isElementAccessExpression(parent)
  );
}

function textsOf(template: ts.TemplateLiteral, source: ts.SourceFile): string[] {
  const whole = ts.isTemplateExpression(template)
    ? [template.head.text, ...template.templateSpans.map(({ literal }) => literal.text)].join('\u0000')
    : template.text;
  const tidy = whole.replace(/<style[\s\S]*?<\/style>|<!--[\s\S]*?-->/g, '');
  const spoken = [...tidy.matchAll(SPOKEN)].map(([, text = '']) => text);
  // Between tags; a value in a tag may hold a '>' only inside an expression, which is cut out already.
  const between = tidy.replace(/<[^>]*>/g, '\u0001').split('\u0001');
  void source;
  return [...spoken, ...between]
    .map((text) => text.replaceAll('\u0000', '{}'))
    .filter((text) => /[A-Za-zÄÖÜäöü]{2,}/.test(text));
}

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../../packages/', import.meta.url));
/** Where calculations say something of a result. */
const folders = [
  'calculation/src',
  'exhaust/src',
  'workshop/src/before-after',
  'workshop/src/filter-condition',
  'workshop/src/reset-advice',
];

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name}`)
    .filter((name) => statSync(name).isFile())
    .sort();
}

/** What of a definition is no sentence: formulas, ranges, names of sources, and what stands in the definition by a key. */
const notSaid = new Set(['formula', 'cases', 'nested', 'solved', 'verdict', 'fromTable', 'rows', 'found', 'relevantWhen', 'whenGiven']);
const describedCalls = new Set(['quantity', 'choice', 'count', 'flag', 'text', 'list', 'group', 'section', 'statement', 'constant']);
const notSaidProps = new Set([
  'range',
  'symbol',
  'example',
  'default',
  'locator',
  'title',
  'by',
  'doi',
  'id',
  'units',
  'usual',
  'keywords',
  'purpose',
  'type',
  'mark',
  'dimensional',
]);

function isProse(text: string): boolean {
  return /[A-Za-z]{2,}[ ,;:.]+[(“"]?[A-Za-z]{2,}/.test(text) && !/[*^\\=]|[<>]=? | \/ |\[\[|\bsum\(|\bknown\(/.test(text);
}

function calledName(node: ts.CallExpression): string | undefined {
  const { expression } = node;
  return ts.isIdentifier(expression) ? expression.text : ts.isPropertyAccessExpression(expression) ? expression.name.text : undefined;
}

// Limits are data that kernels share, which know nothing of languages; the definition says the names in them.
function isNameOfLimit(node: ts.StringLiteral): boolean {
  const { parent } = node;
  if (!node.getSourceFile().fileName.endsWith('/limits.ts')) return false;
  if (ts.isPropertyAssignment(parent)) return ['name', 'note'].includes(parent.name.getText());
  return ts.isCallExpression(parent) && parent.arguments[0] === node;
}

function isElsewhere(node: ts.Node): boolean {
  for (let child = node, parent = node.parent; parent !== undefined; child = parent, parent = parent.parent) {
    if (ts.isImportDeclaration(parent) || ts.isExportDeclaration(parent) || ts.isThrowStatement(parent) || ts.isLiteralTypeNode(parent))
      return true;
    if (ts.isNewExpression(parent)) return true;
    if (ts.isPropertyAssignment(parent)) {
      if (parent.name === child) return true;
      if (notSaidProps.has(parent.name.getText())) return true;
    }
    if (ts.isCallExpression(parent)) {
      const called = calledName(parent) ?? '';
      if (notSaid.has(called) || describedCalls.has(called)) return true;
    }
  }
  return false;
}

/** Every sentence in the code of calculations, templates with `{1}` where a value stands. */
export function sentencesInCode(described: (subject: string) => ReadonlySet<string>): string[] {
  const found = new Set<string>();
  for (const file of folders.flatMap((folder) => filesIn(`${root}${folder}`))) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
    const subject = /\/workshop\/src\//.test(file) ? 'workshop' : (/\/exhaust\/src\/(\w+)\//.exec(file)?.[1] ?? '');
    const stands = described(subject);
    const visit = (node: ts.Node): void => {
      if (ts.isTaggedTemplateExpression(node) && /^(wf\.)?say$/.test(node.tag.getText())) {
        const { template } = node;
        const parts = ts.isNoSubstitutionTemplateLiteral(template)
          ? [template.text]
          : [template.head.text, ...template.templateSpans.map((span) => span.literal.text)];
        found.add(parts.reduce((text, part, index) => `${text}{${index}}${part}`));
      } else if (ts.isStringLiteral(node) && isNameOfLimit(node)) found.add(node.text);
      else if (ts.isStringLiteral(node) && isProse(node.text) && !stands.has(node.text) && !isElsewhere(node)) found.add(node.text);
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return [...found].sort();
}

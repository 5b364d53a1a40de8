import ts from 'typescript';

export interface Unrepeatable {
  readonly line: number;
  readonly found: string;
}

/**
 * The part of Math whose result the language fixes to the last bit. Everything else
 * in Math (exp, log, pow, sin, random …) differs between engines or between runs.
 */
const EXACT_MATH = new Set([
  'abs',
  'ceil',
  'clz32',
  'floor',
  'fround',
  'imul',
  'max',
  'min',
  'round',
  'sign',
  'sqrt',
  'trunc',
  'PI',
  'E',
  'LN2',
  'LN10',
  'LOG2E',
  'LOG10E',
  'SQRT2',
  'SQRT1_2',
]);
/** Ways to the wall clock, to chance, or around this search. */
const FORBIDDEN_GLOBALS = new Set([
  'Date',
  'performance',
  'crypto',
  'globalThis',
  'setTimeout',
  'setInterval',
  'queueMicrotask',
  'eval',
  'Function',
]);

/** Finds what would make a run differ between engines, machines or times of day. */
export function findUnrepeatable(source: string): Unrepeatable[] {
  const file = ts.createSourceFile('source.ts', source, ts.ScriptTarget.ES2022, true);
  const found: Unrepeatable[] = [];
  const report = (node: ts.Node, what: string) => {
    const { line } = file.getLineAndCharacterOfPosition(node.getStart(file));
    found.push({ line: line + 1, found: what });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node)) return;
    if (
      node.kind === ts.SyntaxKind.AsteriskAsteriskToken ||
      node.kind === ts.SyntaxKind.AsteriskAsteriskEqualsToken
    ) {
      report(node, '**');
    }
    if (ts.isIdentifier(node) && isReference(node)) {
      if (node.text === 'Math') {
        const name = memberOfMath(node);
        if (name === undefined) report(node, 'Math other than by a named member');
        else if (!EXACT_MATH.has(name)) report(node, `Math.${name}`);
      } else if (FORBIDDEN_GLOBALS.has(node.text)) {
        report(node, node.text);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function memberOfMath(node: ts.Identifier): string | undefined {
  const parent = node.parent;
  return ts.isPropertyAccessExpression(parent) && parent.expression === node
    ? parent.name.text
    : undefined;
}

/** A name that is used, as against one that names a member, a key or a declaration. */
function isReference(node: ts.Identifier): boolean {
  const parent = node.parent;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isShorthandPropertyAssignment(parent)) return true;
  const namesIt =
    ts.isPropertyAssignment(parent) ||
    ts.isPropertySignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isMethodSignature(parent) ||
    ts.isParameter(parent) ||
    ts.isVariableDeclaration(parent) ||
    ts.isFunctionDeclaration(parent) ||
    ts.isInterfaceDeclaration(parent) ||
    ts.isTypeAliasDeclaration(parent);
  return !(namesIt && parent.name === node);
}

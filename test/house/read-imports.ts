import { parseSync } from 'oxc-parser';

/** One place where a file reaches for another module, whatever the syntax. */
export interface ImportUse {
  /** What stands between the quotes; undefined when it is computed, so that nobody can tell where it leads. */
  readonly specifier: string | undefined;
  readonly line: number;
}

export interface FileReading {
  readonly imports: readonly ImportUse[];
  /** Lines of `export * from`. */
  readonly exportAlls: readonly number[];
  /** Lines of triple-slash references, which pull in types without an import. */
  readonly references: readonly number[];
  /** The parser's own words, when the file could not be read to its end. */
  readonly syntaxErrors: readonly string[];
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

function isNode(value: unknown): value is Node {
  return value !== null && typeof value === 'object' && 'type' in value && typeof value.type === 'string';
}

/** The text of a string literal or of a template without holes; undefined for anything computed. */
function literalText(value: unknown): string | undefined {
  if (!isNode(value)) return undefined;
  if (value.type === 'TSLiteralType') return literalText(value.literal);
  if (value.type === 'Literal') return typeof value.value === 'string' ? value.value : undefined;
  if (value.type !== 'TemplateLiteral' || !Array.isArray(value.quasis) || value.quasis.length !== 1)
    return undefined;
  const cooked: unknown = value.quasis[0]?.value?.cooked;
  return typeof cooked === 'string' ? cooked : undefined;
}

function isIdentifier(value: unknown, name: string): boolean {
  return isNode(value) && value.type === 'Identifier' && value.name === name;
}

function isImportMeta(value: unknown, property: string): boolean {
  return (
    isNode(value) &&
    value.type === 'MemberExpression' &&
    isNode(value.object) &&
    value.object.type === 'MetaProperty' &&
    isNode(value.property) &&
    (value.property.name === property || value.property.value === property)
  );
}

/**
 * What one syntax node imports: a list of specifiers, where undefined stands for a computed one. Covers type
 * imports, re-exports, `import()`, `typeof import()`, `import x = require()`, `require()`, `declare module`,
 * `import.meta.glob` and `new URL(..., import.meta.url)`, by which bundlers find workers and assets.
 */
function specifiersOf(node: Node): (string | undefined)[] {
  const args = Array.isArray(node.arguments) ? node.arguments : [];
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'TSImportType':
      return [literalText(node.source)];
    case 'ExportNamedDeclaration':
      return node.source ? [literalText(node.source)] : [];
    case 'TSExternalModuleReference':
      return [literalText(node.expression)];
    case 'TSModuleDeclaration': {
      const name = literalText(node.id);
      return name === undefined || name.includes('*') ? [] : [name];
    }
    case 'CallExpression':
      if (isIdentifier(node.callee, 'require')) return [literalText(args[0])];
      return isImportMeta(node.callee, 'glob') ? [undefined] : [];
    case 'NewExpression':
      return isIdentifier(node.callee, 'URL') && isImportMeta(args[1], 'url') ? [literalText(args[0])] : [];
    default:
      return [];
  }
}

function visit(value: unknown, onNode: (node: Node) => void): void {
  if (Array.isArray(value)) {
    for (const item of value) visit(item, onNode);
    return;
  }
  if (!isNode(value)) return;
  onNode(value);
  for (const field of Object.values(value)) visit(field, onNode);
}

/** Reads every way in which one TypeScript or JavaScript file reaches for another. */
export function readImports(path: string, source: string): FileReading {
  const { program, comments, errors } = parseSync(path, source);
  const lineAt = (offset: number) => source.slice(0, offset).split('\n').length;
  const imports: ImportUse[] = [];
  const exportAlls: number[] = [];
  visit(program, (node) => {
    if (node.type === 'ExportAllDeclaration') exportAlls.push(lineAt(node.start));
    for (const specifier of specifiersOf(node)) imports.push({ specifier, line: lineAt(node.start) });
  });
  return {
    imports,
    exportAlls,
    references: comments
      .filter((comment) => comment.type === 'Line' && /^\/\s*<reference\b/.test(comment.value))
      .map((comment) => lineAt(comment.start)),
    syntaxErrors: errors.filter((error) => error.severity === 'Error').map((error) => error.message),
  };
}

import { dirname, posix, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { refusal } from './border-law.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** @param {string} path */
const fromRoot = (path) => relative(root, path).split(sep).join(posix.sep);

/** @param {string} specifier @param {string} file */
function place(specifier, file) {
  if (specifier.startsWith('.')) return fromRoot(resolve(dirname(file), specifier));
  if (specifier.startsWith('/')) return specifier.slice(1);
  return `package:${specifier}`;
}

/** @type {import('eslint').Rule.RuleModule} */
export const border = {
  meta: { type: 'problem', schema: [] },
  create(context) {
    const from = fromRoot(context.filename);

    /**
     * @param {import('eslint').Rule.Node} node
     * @param {unknown} specifier
     * @param {import('./border-law.mjs').Manner} manner
     */
    function judge(node, specifier, manner) {
      if (typeof specifier !== 'string') return;
      const to = place(specifier, context.filename);
      const message = refusal({ from, to, manner });
      if (message) context.report({ node, message });
    }

    /** @param {any} node */
    const declaration = (node) => {
      const typeOnly = node.importKind === 'type' || node.exportKind === 'type';
      judge(node, node.source?.value, typeOnly ? 'type' : 'value');
    };

    return {
      ImportDeclaration: declaration,
      ExportNamedDeclaration: declaration,
      ExportAllDeclaration: declaration,
      /** @param {any} node */
      ImportExpression: (node) => judge(node, literal(node.source), 'value'),
      /** @param {any} node */
      TSImportType: (node) => judge(node, literal(node.source ?? node.argument?.literal), 'type'),
      /** @param {any} node */
      NewExpression(node) {
        const isUrl = node.callee.name === 'URL' && node.arguments.length === 2;
        if (isUrl) judge(node, literal(node.arguments[0]), 'url');
      },
      /** @param {any} node */
      "CallExpression[callee.object.type='MetaProperty'][callee.property.name='glob']"(node) {
        const [first] = node.arguments;
        for (const part of first?.elements ?? [first]) judge(node, literal(part), 'value');
      },
    };
  },
};

/** @param {any} node */
const literal = (node) =>
  node?.value ?? (node?.quasis?.length === 1 ? node.quasis[0].value.cooked : undefined);

import { createElement, Fragment, type ReactNode } from 'react';
import type { XmlNode } from '../../records/index.ts';

/** Marked-up text on the page; of its attributes only class and scope are taken. */
export function Marked({ nodes }: { readonly nodes: readonly XmlNode[] }) {
  return createElement(Fragment, null, ...nodes.map(shown));
}

function shown(node: XmlNode): ReactNode {
  if (typeof node === 'string') return node;
  const { name, attributes, children } = node;
  return createElement(
    name,
    { className: attributes.class, scope: attributes.scope },
    ...children.map(shown),
  );
}

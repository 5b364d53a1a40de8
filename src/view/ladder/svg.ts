const SVG = 'http://www.w3.org/2000/svg';

export function svgNode(
  name: string,
  attributes: Readonly<Record<string, string | number>>,
): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  return element;
}

export function svgText(content: string, x: number, y: number, anchor: string): SVGElement {
  const element = svgNode('text', { x, y, 'text-anchor': anchor });
  element.textContent = content;
  return element;
}

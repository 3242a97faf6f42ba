/** SVG as text: escaping, numbers, elements. */
import { clean } from '../clean-text.ts';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text fit for XML: what XML forbids is gone, what it reserves is spelled out. */
export const escaped = (text: string): string =>
  clean(text).replace(/[&<>"']/g, (sign) => entities[sign] ?? '');

/** To a hundredth of an inch, without a minus zero. */
export const n = (value: number): string => String(Math.round(value * 100) / 100 + 0);

export type Attributes = Readonly<Record<string, string | number>>;

export function element(name: string, attributes: Attributes, ...inner: readonly string[]): string {
  const list = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? n(value) : escaped(value)}"`)
    .join('');
  return inner.length === 0 ? `<${name}${list}/>` : `<${name}${list}>${inner.join('')}</${name}>`;
}

export const label = (attributes: Attributes, text: string): string =>
  element('text', attributes, escaped(text));

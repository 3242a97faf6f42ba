/** Text from a job or a shelf, made fit for paper: no control characters, only signs the font has. */

/** Signs of the page font beyond letters and figures; a test opens the font and looks for each. */
export const SIGNS = '−·√≤≥²³′″°øØΩΓφΦαβγθλμµηπρσ×÷½¼¾⅛⅜⅝⅞—–“”‘’…☐✓→←↑↓≈≠±§•■□¿¡ñáéíóúüÑÁÉÍÓÚ€';

const allowed = new RegExp(`[\\x20-\\x7e\\u00a1-\\u017f${SIGNS.replace(/[\]\\^-]/g, '\\$&')}]`, 'u');

/** Signs that mean the same as one the font has. */
const spelled: Readonly<Record<string, string>> = {
  '⌀': 'ø',
  '\t': ' ',
  '\n': ' ',
  '\r': ' ',
  '\u00a0': ' ',
  '\u2009': ' ',
  '\u202f': ' ',
  '‑': '-',
  '‐': '-',
};

/** Emoji and other scripts become a box, so that a reader sees that something stood there. */
const MISSING = '□';

export function clean(text: string): string {
  let out = '';
  for (const sign of text.normalize('NFC')) {
    const same = spelled[sign] ?? sign;
    if (same !== '' && allowed.test(same)) out += same;
    else if (isVisible(same) && !out.endsWith(MISSING)) out += MISSING;
  }
  return out;
}

/** Control characters, joiners, direction marks and variation selectors leave no trace. */
function isVisible(sign: string): boolean {
  return !/[\p{Cc}\p{Cf}\p{Mn}\p{Zl}\p{Zp}\p{Cs}]/u.test(sign);
}

/** At most so many signs, the last one an ellipsis where something was cut. */
export function cut(text: string, most: number): string {
  const signs = [...text];
  return signs.length <= most
    ? text
    : `${signs
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
}

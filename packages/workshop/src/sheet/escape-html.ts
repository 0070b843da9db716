import { visibleText } from './visible-text.js';

const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Text for HTML, also inside attributes. What a user typed is shown, never run or obeyed. */
export function escapeHtml(text: string): string {
  return visibleText(text).replace(/[&<>"']/g, (sign) => signs[sign] ?? sign);
}

const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Text for HTML, also inside attributes. What a user typed is shown, never run. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => signs[sign] ?? sign);
}

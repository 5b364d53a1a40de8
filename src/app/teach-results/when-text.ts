/** An instant as the people here write it. */
export function whenText(at: number | string): string {
  return new Date(at).toLocaleString(document.documentElement.lang || 'en-GB', {
    dateStyle: 'medium',
    timeStyle: 'short',
  });
}

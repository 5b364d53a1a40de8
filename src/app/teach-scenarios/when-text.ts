const FORM = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

export function whenText(when: number | string): string {
  return FORM.format(new Date(when));
}

import type { KeyboardEvent } from 'react';

/** Enter goes on to the next field in sight; a field whose text cannot be used keeps the key for itself. */
export function useGoingOn() {
  return (event: KeyboardEvent<HTMLElement>) => {
    if (event.key !== 'Enter' || event.defaultPrevented) return;
    const fields = [...event.currentTarget.querySelectorAll<HTMLInputElement>('.measure input[type="text"]')];
    const inSight = fields.filter((field) => field.checkVisibility());
    const place = inSight.indexOf(event.target as HTMLInputElement);
    if (place >= 0) inSight[place + 1]?.focus();
  };
}

/**
 * `npm run campaign` takes every case of the tests that sweep over many; the unit tests take fewer, so chosen that each kind comes up.
 * Assertions are the same.
 */
export const isCampaign = import.meta.env.MODE === 'whole';

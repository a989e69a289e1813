/** The maker's day, as in 2024-05-31. */
export function today(): string {
  const now = new Date();
  const two = (n: number) => `${n}`.padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

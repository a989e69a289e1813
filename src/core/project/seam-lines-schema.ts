import { z } from './zod-without-code.ts';

const id = z.string().min(1).max(60);
const angle = z.number().min(-10).max(10);
const height = z.number().min(-2000).max(2000);

export const anchorSchema = z.strictObject({
  landmark: id.exactOptional(),
  level: id.exactOptional(),
  u: angle.exactOptional(),
  v: height.exactOptional(),
  toward: z.strictObject({ landmark: id, fraction: z.number().min(-1).max(2) }).exactOptional(),
  onLine: id.exactOptional(),
  armhole: z.number().min(-1).max(2).exactOptional(),
});

export const seamLineSchema = z.strictObject({
  id,
  name: z.string().min(1).max(100),
  through: z.array(anchorSchema).min(2).max(40),
  alongLevel: id.exactOptional(),
  alongHeight: anchorSchema.exactOptional(),
  ease: z
    .strictObject({
      fraction: z.number().min(0).max(0.05),
      longer: z.enum(['front', 'back', 'above', 'below']),
    })
    .exactOptional(),
  side: z.enum(['centre', 'right']),
});

/** A whole layout drawn by hand: between one line and as many as letters can tell apart. */
export const seamLinesSchema = z.array(seamLineSchema).min(1).max(60);

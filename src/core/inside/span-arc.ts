import { assertInvariant } from '../base/index.ts';

/** A stretch of sleeve between two held points, bowed out by the pressure: an arc of a circle. */
export interface SpanArc {
  /** Half the angle the arc turns through, radians, over 0 and below π. */
  readonly halfAngle: number;
  /** mm. */
  readonly radius: number;
  /** Area between arc and chord, mm². */
  readonly area: number;
  /** d(potential)/d(chord) per unit of pressure, mm: the pull along the chord, radius · cos(halfAngle). */
  readonly pull: number;
  /** d(pull)/d(chord). */
  readonly stiffness: number;
  /** Energy stored in the stretched cloth per unit of pressure, mm². */
  readonly energy: number;
}

/**
 * The arc of a span of unstretched length l (mm) over a chord c (mm) under pressure p, of cloth that grows by T/(Et)
 * under its hoop tension T = p r (Laplace's law). `stretch` = p/(Et) in 1/mm; 0 = does not stretch.
 * With half angle φ: chord 2 r sin φ = c, arc 2 r φ = l (1 + stretch · r); so r = l/(2φ − l·stretch), and without stretch
 * sin φ/φ = c/l. Safeguarded Newton, about six steps. Precondition: c > 0; c < l when the cloth does not stretch.
 */
export function solveSpanArc(length: number, chord: number, stretch = 0): SpanArc {
  const least = 0.5 * length * stretch;
  const isPossible = chord > 0 && length > 0 && least < 1 && (chord < length || stretch > 0);
  assertInvariant(isPossible, 'inside', `a span of ${length} mm bows out over a shorter chord`, chord);
  // chord(φ) = l sin φ/(φ − least) falls all the way from `least` to π.
  let low = least;
  let high = Math.PI;
  const short = Math.max(1e-14, 1 - chord / length);
  let phi = least + Math.min(2.9, Math.sqrt(6 * short) * (1 + 0.15 * short));
  for (let i = 0; i < 60; i++) {
    const gap = phi - least;
    const error = length * Math.sin(phi) - chord * gap;
    if (error > 0) low = phi;
    else high = phi;
    const slope = length * Math.cos(phi) - chord;
    let next = phi - error / slope;
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    const step = Math.abs(next - phi);
    phi = next;
    if (step < 1e-15 * phi) break;
  }
  return arcAt(phi, length, stretch);
}

function arcAt(phi: number, length: number, stretch: number): SpanArc {
  const cos = Math.cos(phi);
  const sin = Math.sin(phi);
  const radius = length / (2 * phi - length * stretch);
  const radiusRate = (-2 * radius * radius) / length;
  const chordRate = 2 * (radius * cos + sin * radiusRate);
  const pullRate = radiusRate * cos - radius * sin;
  return {
    halfAngle: phi,
    radius,
    area: radius * radius * (phi - sin * cos),
    pull: radius * cos,
    stiffness: pullRate / chordRate,
    energy: 0.5 * stretch * radius * radius * length,
  };
}

/**
 * Radius of a closed sleeve of unstretched perimeter P with nothing inside it, mm: 2πr = P (1 + stretch · r).
 * Source: Laplace's law T = p r and Hooke's law for the hoop. Fails by exception when the cloth has no balance
 * (P · stretch ≥ 2π: it would burst).
 */
export function radiusOfFreeSleeve(perimeter: number, stretch = 0): number {
  const room = 2 * Math.PI - perimeter * stretch;
  assertInvariant(room > 0, 'inside', 'a sleeve under pressure finds a balance', room);
  return perimeter / room;
}

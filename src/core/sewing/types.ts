import type { Phrase } from '../base/index.ts';

/** What a part is made of, as far as it can be turned, drawn through and put in: cloth, foam, or what does not bend. */
export type Stuff = 'limp' | 'foam' | 'rigid';

/** A point of a level's ring. mm: along the ring, and seen from above. */
export interface Foot {
  readonly at: number;
  readonly x: number;
  readonly y: number;
}

/** One level of the shell as a ring of cloth, seen from above. mm. */
export interface LevelRing {
  readonly id: string;
  readonly girth: number;
  /** Upright seams that cross it, by id. */
  readonly seams: Readonly<Record<string, Foot>>;
  /** Joints of inner parts with the shell, by id. */
  readonly feet: Readonly<Record<string, Foot>>;
  /** How far inner parts reach across here, by id; of the sleeve its flat girth. */
  readonly widths: Readonly<Record<string, number>>;
}

/** Two edges that become one. */
export interface Joint {
  readonly id: string;
  /** Parts that meet: panels, braces, `sleeve`, plates. */
  readonly parts: readonly string[];
  /** Allowances of its edges, mm; empty where nobody said. */
  readonly allowances: readonly number[];
  readonly isShell: boolean;
  /** As it stands in the list of seams. */
  readonly letter: string;
  readonly name: Phrase;
  /** From its far end to a free edge that no level crosses, mm. */
  readonly toEdge?: number;
}

/** An inner part of cloth, with the joints at its two ends. */
export interface WorkBrace {
  readonly id: string;
  readonly kind: 'tie' | 'web' | 'strap' | 'throat';
  readonly side: 'right' | 'left' | 'centre';
  readonly from: readonly string[];
  readonly to: readonly string[];
  readonly isOnSleeve: boolean;
  /** The web through whose slot it passes. */
  readonly through?: string;
}

/** Something with a shape of its own that is put in. mm. */
export interface SolidPart {
  readonly id: string;
  readonly stuff: Stuff;
  /** Round its least section. */
  readonly girth: number;
  /** What passes through it by a hole or slot. */
  readonly holes: readonly string[];
}

/** A region that is filled. */
export interface FillRegion {
  readonly id: string;
  /** Levels at its two ends. */
  readonly upper?: string;
  readonly lower?: string;
  /** Way of the hand from each gate, mm. */
  readonly depth: Readonly<Record<string, number>>;
}

/** All that the proof of an order knows of a form. */
export interface WorkInput {
  /** Cloth as it is sewn, with its interfacing, mm. */
  readonly cloth: number;
  readonly pieces: readonly string[];
  readonly rings: readonly LevelRing[];
  readonly joints: readonly Joint[];
  readonly braces: readonly WorkBrace[];
  /** Girth of every opening, mm. */
  readonly gates: Readonly<Record<string, number>>;
  readonly solids: readonly SolidPart[];
  readonly regions: readonly FillRegion[];
}

/** How two edges are joined; see `checkOrder` for what each asks. */
export type Method = 'plain' | 'packed' | 'lap' | 'flap' | 'ladder' | 'hand';

interface Needing {
  /** Parts that are there. */
  readonly needs?: readonly string[];
  /** Facts found out before. */
  readonly facts?: readonly string[];
}

/** One thing done to the form. */
export type Op = Needing &
  (
    | { readonly does: 'make'; readonly part: string; readonly of: readonly string[] }
    | { readonly does: 'join'; readonly joint: string; readonly how: Method }
    /** Draws everything out through the base that was packed for the seams of a line. */
    | { readonly does: 'draw-out'; readonly seams: readonly string[] }
    | { readonly does: 'thread'; readonly strap: string }
    | { readonly does: 'pull'; readonly brace: string }
    | {
        readonly does: 'insert';
        readonly part: string;
        readonly through: string;
        /** Parts that pass through it or that it slides over. */
        readonly over?: readonly string[];
      }
    /** A part that would otherwise be loose is held. */
    | { readonly does: 'fix'; readonly part: string; readonly to: string; readonly from: 'outside' | string }
    | { readonly does: 'gate'; readonly gate: string; readonly girth: number }
    | { readonly does: 'put-on' | 'take-off'; readonly part: string; readonly end: string }
    | { readonly does: 'fill'; readonly region: string; readonly through: string; readonly by: Tool }
    /** `flat`: laid flat; `round`: round filled regions; `stiff`: between things that do not bend; `limp`: hanging. */
    | { readonly does: 'read'; readonly fact: string; readonly how: Reading; readonly level?: string }
    /** Put over a head; `growth`: what was taken off its pieces. */
    | { readonly does: 'wear'; readonly part: string; readonly through: number; readonly growth: boolean }
    | { readonly does: 'carry'; readonly from: string; readonly to: string }
    | { readonly does: 'danger'; readonly of: string }
  );

export type Tool = 'fingers' | 'hand' | 'arm' | 'stick';
export type Reading = 'flat' | 'round' | 'stiff' | 'paper' | 'person' | 'limp';

/** A step as it is proven. */
export interface ProvenStep {
  readonly id: string;
  readonly ops: readonly Op[];
  /** Cautions told at it. */
  readonly cautions: readonly string[];
  /** Joints in the order in which the step lists them. */
  readonly listed: readonly string[];
}

/** What the check found: which rule, at which step, why. */
export interface OrderFault {
  readonly rule: OrderRule;
  readonly step: string;
  readonly reason: Phrase;
}

export const ORDER_RULES = [
  'part-missing',
  'fact-missing',
  'packed-untold',
  'pack-too-tight',
  'no-free-edge',
  'head-does-not-pass',
  'insert-blocked',
  'enclosed-unfixed',
  'no-hole',
  'open-neighbour',
  'pulled-though-joined',
  'measured-limp',
  'threaded-late',
  'piece-unused',
  'seam-list',
  'load-chain',
  'beyond-reach',
  'caution-place',
  'allowance-too-small',
  'joined-not-once',
] as const;

/** The nineteen checks of an order, and that every edge is joined once. */
export type OrderRule = (typeof ORDER_RULES)[number];

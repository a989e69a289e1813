import type { StopId } from '../../../language/english/help.ts';
import type { Stage } from '../../store/index.ts';

/** A stop of the round: the stage it leads to, and the thing of the page that is lit there. */
export interface Stop {
  readonly id: StopId;
  readonly stage: Stage;
  /** Finds one thing, small enough to stand on a phone over the words about it. */
  readonly thing: string;
}

export const STOPS: readonly Stop[] = [
  { id: 'firstFive', stage: 'tape', thing: '.first-five .measures' },
  { id: 'body', stage: 'body', thing: '.body-picture' },
  { id: 'layout', stage: 'seams', thing: '.layout-card[data-chosen]' },
  { id: 'verdict', stage: 'seams', thing: '.verdict-line' },
  { id: 'flat', stage: 'panels', thing: '.flat-keys' },
  { id: 'inside', stage: 'inside', thing: '.inside-choices:not(:has(h3)) .field-row' },
  { id: 'cutting', stage: 'cutting', thing: '.tube-first h3' },
  { id: 'making', stage: 'making', thing: '.work-step[data-next] summary' },
  { id: 'checking', stage: 'checking', thing: '.checking-begin' },
];

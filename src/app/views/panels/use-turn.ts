import { useNumbers, useWords } from '../parts/use-words.ts';
import { sayTurn } from './turn-of-grain.ts';

/** Says a turn of a grain, degrees, in the present language. */
export function useTurn(): (deg: number) => string {
  const { grain } = useWords();
  const numbers = useNumbers();
  return (deg) => sayTurn(deg, grain, numbers);
}

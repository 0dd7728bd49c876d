/** What stands in the words of the page and was printed for the same reader already: a length by his numbers, a label, a sentence. */
import { name, type Part } from '../../text/part.ts';

export const ready = (printed: string): Part => name(printed);

import type { FunctionDeclaration } from '../language/functions/declaration.ts';
import { TRADE } from '../trade/trade-functions.ts?whole';

/** A formula of the trade with all that is said of it; the first script holds only what it works with. */
export function findProse(name: string): FunctionDeclaration | undefined {
  return TRADE.find((declaration) => declaration.name === name);
}

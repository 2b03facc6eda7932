import axe from 'axe-core';
import type { Page } from 'playwright';

/**
 * What axe finds, a line each.
 *
 * @param within a selector: only what stands in it is judged
 * @param rules only these; without them all that WCAG 2.2 AA and good practice ask for
 */
export async function findBarriers(
  page: Page,
  rules?: readonly string[],
  within?: string,
): Promise<readonly string[]> {
  // The page's own policy lets no script in but its own, so the checker comes by the debugger.
  await page.evaluate(`window.axe ?? (() => {${axe.source}})()`);
  const found = await page.evaluate(
    async ({ only, place }) => {
      const { axe: checker } = window as unknown as { axe: typeof import('axe-core') };
      const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
      const runOnly = only === undefined ? tags : { type: 'rule' as const, values: [...only] };
      return (
        await checker.run(place === undefined ? document : { include: [place] }, {
          runOnly,
          resultTypes: ['violations'],
        })
      ).violations;
    },
    { only: rules, place: within },
  );
  return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 200)}`));
}

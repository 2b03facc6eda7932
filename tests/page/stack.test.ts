import { expect, test, vi } from 'vitest';
import { createStack } from '../../src/page/stack.ts';
import { createTestDesk, textOf } from './test-desk.ts';

const SHEET = `
\`\`\`given
finger = 3.212 in "Down to the fingers"
bearing = 3.047 in "Down to the gearbox"
\`\`\`

\`\`\`stack gap "Gap" as in to 0.001
+ finger
- bearing "bearing, piston in"
\`\`\`
`;

function show() {
  const test = createTestDesk(SHEET);
  const element = test.show(createStack(test.desk, test.sheet, test.block('stack')));
  return { ...test, element };
}

test('the sum stands large under the chain, and the chain names its terms', async () => {
  const { element } = show();
  expect(textOf(element.querySelector('.answer strong'))).toBe('0.165 in');
  await vi.waitFor(() => expect(element.querySelector('svg')).not.toBeNull());
  const words = textOf(element.querySelector('svg desc'));
  expect(words).toContain('plus finger, 3.212 in');
  expect(words).toContain('minus bearing, piston in, 3.047 in');
});

test('the chain is drawn again when a reading changes', async () => {
  const { desk, given, element } = show();
  desk.enter(given('finger'), { text: '3.3' });
  await desk.settled();
  await vi.waitFor(() => expect(textOf(element.querySelector('desc'))).toContain('3.300 in'));
  expect(textOf(element.querySelector('.answer strong'))).toBe('0.253 in');
});

test('a reading that is wanting is waited for, and drawn as unknown', async () => {
  const { desk, given, element } = show();
  desk.enter(given('finger'), { text: '' });
  await desk.settled();
  expect(textOf(element.querySelector('.waits'))).toMatch(/^waits for Down to the fingers/);
  await vi.waitFor(() => expect(textOf(element.querySelector('desc'))).toContain('not known yet'));
});

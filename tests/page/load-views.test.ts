import { expect, test } from 'vitest';
import {
  loadAllViews,
  loadDoubt,
  loadFigures,
  loadFinds,
  loadPractice,
  loadReport,
} from '../../src/page/load-views.ts';

test('each view can be had', async () => {
  expect((await loadFigures()).name).toBe('createFigures');
  expect((await loadFinds()).name).toBe('createFinds');
  expect((await loadReport()).reportChange.name).toBe('reportChange');
  expect((await loadPractice()).name).toBe('createPractice');
  expect(Object.keys(await loadDoubt()).sort()).toEqual([
    'createSpreadLine',
    'describeVerdictUnderDoubt',
    'spreadOf',
  ]);
});

test('all of them can be had beforehand', async () => {
  await expect(loadAllViews()).resolves.toBeUndefined();
});

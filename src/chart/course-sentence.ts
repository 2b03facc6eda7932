import type { ChartData } from '../sheet/chart-data.ts';
import { formatOn } from './chart-number.ts';
import { describeShape, type LineShape } from './line-shape.ts';
import { listWords, nameInList } from './words.ts';

type Course = LineShape['course'];

const ONE: Readonly<Record<Course, string>> = {
  rises: 'rises from left to right',
  falls: 'falls from left to right',
  level: 'is level',
  peak: 'rises, then falls',
  dip: 'falls, then rises',
  'to and fro': 'goes up and down',
  nothing: 'has no values here',
};

const SEVERAL: Readonly<Record<Course, string>> = {
  rises: 'rise from left to right',
  falls: 'fall from left to right',
  level: 'are level',
  peak: 'rise, then fall',
  dip: 'fall, then rise',
  'to and fro': 'go up and down',
  nothing: 'have no values here',
};

/** How the lines of a chart run: a single one with its figures, several grouped by their course. */
export function sayCourses(data: ChartData): string {
  const { series, y } = data;
  const shapes = series.map(({ points }) => describeShape(points, [y.from, y.to]));
  if (series.length === 0) return '';
  return series.length === 1 ? sayCourse(data, shapes[0]!) : groupCourses(data, shapes);
}

function sayCourse({ x, y }: ChartData, shape: LineShape): string {
  const { first, last, lowest, highest } = shape;
  switch (shape.course) {
    case 'rises':
    case 'falls':
      return `it ${shape.course} from ${formatOn(y, first[1])} to ${formatOn(y, last[1])}`;
    case 'level':
      return `it stays at ${formatOn(y, first[1])}`;
    case 'peak':
      return `it rises to ${formatOn(y, highest[1])} at ${formatOn(x, highest[0])}, then falls`;
    case 'dip':
      return `it falls to ${formatOn(y, lowest[1])} at ${formatOn(x, lowest[0])}, then rises`;
    case 'to and fro':
      return `it goes up and down between ${formatOn(y, lowest[1])} and ${formatOn(y, highest[1])}`;
    case 'nothing':
      return 'it has no values here';
    default:
      return shape.course satisfies never;
  }
}

/** The largest group comes last and, where it is large, without its names. */
function groupCourses({ series }: ChartData, shapes: readonly LineShape[]): string {
  const groups = new Map<Course, string[]>();
  shapes.forEach(({ course }, i) => {
    groups.set(course, [...(groups.get(course) ?? []), nameInList(series[i]!.label)]);
  });
  const ordered = [...groups].sort(([, a], [, b]) => a.length - b.length);
  const told = ordered.map(([course, names], i) => {
    if (ordered.length === 1) return `every line ${ONE[course]}`;
    if (i === ordered.length - 1 && names.length > 2) return `the others ${SEVERAL[course]}`;
    return `${listWords(names)} ${(names.length === 1 ? ONE : SEVERAL)[course]}`;
  });
  return told.join('; ');
}

/** A label in a column: where its middle should stand, and how tall it is, in px. */
export interface ColumnLabel {
  readonly middle: number;
  readonly height: number;
}

interface Cluster {
  readonly members: readonly number[];
  readonly top: number;
  readonly height: number;
}

/**
 * Middles for labels in a column, none over another, all between `from` and `to` where they fit
 * there, each as near to its wish as the others allow. In the order of the labels given.
 */
export function spreadLabels(
  labels: readonly ColumnLabel[],
  from: number,
  to: number,
): readonly number[] {
  const order = labels.map((_, i) => i).sort((a, b) => labels[a]!.middle - labels[b]!.middle);
  const clusters: Cluster[] = [];
  for (const i of order) {
    let cluster = gather([i], labels, from, to);
    while (clusters.length > 0 && footOf(clusters.at(-1)!) > cluster.top)
      cluster = gather([...clusters.pop()!.members, ...cluster.members], labels, from, to);
    clusters.push(cluster);
  }
  return readMiddles(clusters, labels);
}

function footOf({ top, height }: Cluster): number {
  return top + height;
}

/** Labels one under the other, their block as near as can be to what they wish on the whole. */
function gather(
  members: readonly number[],
  labels: readonly ColumnLabel[],
  from: number,
  to: number,
): Cluster {
  let [height, wishes] = [0, 0];
  for (const i of members) {
    wishes += labels[i]!.middle - labels[i]!.height / 2 - height;
    height += labels[i]!.height;
  }
  const top = Math.max(from, Math.min(wishes / members.length, to - height));
  return { members, top, height };
}

function readMiddles(
  clusters: readonly Cluster[],
  labels: readonly ColumnLabel[],
): readonly number[] {
  const middles: number[] = labels.map(() => 0);
  for (const { members, top } of clusters) {
    let y = top;
    for (const i of members) {
      middles[i] = y + labels[i]!.height / 2;
      y += labels[i]!.height;
    }
  }
  return middles;
}

/** Cells in one part of a generated sheet: one reading and what is worked from it. */
const CELLS_IN_PART = 10;

/**
 * A sheet of so many cells (a multiple of ten), made like those that people write: parts with a
 * heading, a paragraph, a reading and nine formulas that lean on one another and on the part before.
 * Only a few cells hang on any one reading, so that a change can be cheap.
 */
export function generateSheet(cells: number): string {
  const parts = Array.from({ length: cells / CELLS_IN_PART }, (_, i) => generatePart(i));
  return `# A generated sheet of ${cells} cells\n\n${parts.join('\n')}`;
}

/** The reading whose change is timed: it stands in the last part, so nothing else waits for it. */
export function lastReading(cells: number): string {
  return `depth_${cells / CELLS_IN_PART - 1}`;
}

function generatePart(i: number): string {
  const before = i === 0 ? '2.5 in' : `width_${i - 1}`;
  return `## Part ${i}

Depth of pocket ${i}, measured in three places from the machined face.

\`\`\`given
depth_${i} = ${(3 + (i % 7) / 8).toFixed(3)} ± 0.003 in "Depth ${i}" from 1 in to 5 in to 0.001
  how "Depth gauge over the straightedge, three places"
\`\`\`

\`\`\`work
width_${i} = depth_${i} / 2 + 3 1/8 in "Width" as in to 0.001
slope_${i} = atan2(depth_${i}, ${before}) "Slope" as deg to 0.1
area_${i} = width_${i} * depth_${i} "Area" as mm^2 to 1
share_${i} = depth_${i} / (width_${i} + depth_${i}) "Share" as % to 0.1
turns_${i} = depth_${i} / (1.5 mm/rev) "Turns" as rev to 0.05
widest_${i} = max(width_${i}, depth_${i}, 80.6 mm) "Widest" as mm to 0.1
reach_${i} = sqrt(area_${i}) + abs(width_${i} - ${before}) "Reach" as in to 0.001
steps_${i} = [1, 2, 3] * width_${i} "Steps" as in to 0.001
total_${i} = sum(steps_${i}) * cos(slope_${i}) + reach_${i} "Total" as in to 0.001
\`\`\`
`;
}

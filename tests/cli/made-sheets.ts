/** Small sheets for the tests of the terminal. */

const FENCE = '```';

export const SHAFT = `# Shaft

${FENCE}given
spin = 2000 rpm "Turning speed" to 10
ratio = 2.5 "Ratio" to 0.01
spare = blank mm "Spare"
sizes = [1, 2, 4] mm "Sizes"
${FENCE}

${FENCE}work
out = spin / ratio "Out" as rpm to 1
steps = [1, 2] * ratio "Steps" to 0.1
room = spare + 2 mm "Room" as mm to 0.1
more_room = room * 2 "More room" as mm to 0.1
off = ratio - 2.5 "Off"
  positive "Too high." negative "Too low." zero "Just right."
${FENCE}

${FENCE}check
out between 500 rpm and 900 rpm "Out" below "Too slow." above "Too fast."
room at least 1 mm "Room"
${FENCE}

${FENCE}chart "Out against ratio"
out as rpm over ratio from 1 to 4
${FENCE}

${FENCE}chart "Room against spin"
room as mm over spin from 1000 rpm to 2000 rpm
${FENCE}

${FENCE}chart "Out on a map"
out as rpm over ratio from 1 to 4 and spin from 1000 rpm to 2000 rpm
${FENCE}
`;

export const WHEEL = `# Wheel

${FENCE}from 10-shaft
spin
ratio as gear
out as shaft_speed
${FENCE}

${FENCE}work
wheel_speed = shaft_speed / 2 "Wheel" as rpm to 1
${FENCE}
`;

export const CAR = `# Car

${FENCE}from 20-wheel
wheel_speed
${FENCE}

${FENCE}work
half = wheel_speed / 2 "Half" as rpm to 1
${FENCE}
`;

export const BROKEN = `# Broken

${FENCE}given
width = 3 in "Width"
${FENCE}

${FENCE}work
wrong = width + 2 rpm "Wrong"
after = wrong * 2 "After"
sound = width * 2 "Sound" as in to 0.1
${FENCE}
`;

export const SHEETS = {
  'notebooks/10-shaft.md': SHAFT,
  'notebooks/20-wheel.md': WHEEL,
  'notebooks/30-car.md': CAR,
  'notebooks/broken.md': BROKEN,
  'notebooks/orphan.md': '# Orphan\n\n```from no-such\nx\n```\n',
} as const;

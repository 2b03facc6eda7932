/** How many digits a number is shown with; the first that is given rules. */
export interface Digits {
  /** Denominator: nearest 1/64 for 64. */
  readonly fraction?: number;
  /** Step of the last digit, in the unit that is shown. */
  readonly resolution?: number;
  /** Significant figures. */
  readonly figures?: number;
}

export const MINUS = '\u2212';
const GROUP = '\u202F';
const NO_BREAK = '\u00A0';
const FIGURES = 4;
/** From here on a double no longer knows its units, and digits would be invented. */
const HUGE = 1e15;
const TINY = 1e-6;
/** Whole numbers below this are shown in full. */
const FULL = 1e6;
/** What is less than a billionth of the last digit is the noise of binary arithmetic: shown as 0. */
const NOISE = 1e-9;

/**
 * A number as the page shows it: minus sign, thin spaces between threes from five digits on,
 * rounded half away from zero. Without `digits` four significant figures, whole numbers below a
 * million in full. What is not 0 is never shown as 0.
 */
export function formatNumber(value: number, digits: Digits = {}): string {
  if (Number.isNaN(value)) return 'no number';
  const sign = value < 0 ? MINUS : '';
  if (!Number.isFinite(value)) return `${sign}∞`;
  const fraction = formatFraction(Math.abs(value), sign, digits.fraction);
  if (fraction !== undefined) return fraction;
  const size = formatSize(Math.abs(value), digits);
  return /[1-9]/.test(size) ? sign + size : size;
}

function formatSize(size: number, { resolution, figures }: Digits): string {
  if (resolution !== undefined && resolution > 0) return formatSteps(size, resolution);
  if (figures !== undefined) return formatFigures(size, figures);
  const whole = Number.isInteger(tidy(size)) && size < FULL;
  return whole ? group(String(tidy(size))) : stripZeros(formatFigures(size, FIGURES));
}

/** To a multiple of the step, with as many decimals as the step has. */
function formatSteps(size: number, resolution: number): string {
  const steps = tidy(size / resolution);
  const vanishes = steps < 0.5 && steps > NOISE;
  if (vanishes) return stripZeros(formatFigures(size, 2));
  if (steps >= HUGE || size >= HUGE) return stripZeros(formatFigures(size, FIGURES));
  return group((Math.round(steps) * resolution).toFixed(countDecimals(resolution)));
}

function formatFigures(size: number, figures: number): string {
  const tidied = tidy(size);
  if (tidied === 0) return '0';
  const [mantissa, power] = tidied.toExponential(Math.max(0, figures - 1)).split('e');
  const exponent = Number(power);
  if (tidied >= HUGE || tidied < TINY)
    return `${mantissa}e${exponent < 0 ? MINUS : ''}${Math.abs(exponent)}`;
  return group(roundTo(tidied, Math.max(0, figures - 1 - exponent)));
}

function roundTo(size: number, decimals: number): string {
  const scale = 10 ** decimals;
  return (Math.round(tidy(size * scale)) / scale).toFixed(decimals);
}

/** Without the last bits, in which binary arithmetic leaves its noise: 100.49999999999999 is 100.5. */
function tidy(value: number): number {
  return Number(value.toPrecision(15));
}

function countDecimals(resolution: number): number {
  const [mantissa, power] = String(resolution).split('e');
  const decimals = mantissa!.split('.')[1]?.length ?? 0;
  return Math.min(100, Math.max(0, decimals - Number(power ?? 0)));
}

/** Without zeros at the end that were not asked for: `2.500` is `2.5`. */
export function stripZeros(text: string): string {
  return text.replace(/(\.\d*?)0+(?=e|$)/, '$1').replace(/\.(?=e|$)/, '');
}

function group(text: string): string {
  const [whole, decimals] = text.split('.');
  const grouped = whole!.length < 5 ? whole! : whole!.replace(/\B(?=(?:\d{3})+$)/g, GROUP);
  return decimals === undefined ? grouped : `${grouped}.${decimals}`;
}

/** `3 1/8`, or `≈ 3 1/8` where it was rounded. Undefined where decimals tell more. */
function formatFraction(size: number, sign: string, denominator = 0): string | undefined {
  const parts = tidy(size * denominator);
  if (denominator < 1 || parts >= HUGE || (parts > NOISE && parts < 0.5)) return undefined;
  const rounded = Math.round(parts);
  const about = Math.abs(rounded - parts) > NOISE * Math.max(1, parts) ? '≈ ' : '';
  const whole = Math.floor(rounded / denominator);
  const rest = formatProper(rounded - whole * denominator, denominator);
  const text =
    whole === 0 && rest !== '' ? rest : [group(String(whole)), rest].join(NO_BREAK).trim();
  return rounded === 0 ? '0' : `${about}${sign}${text}`;
}

function formatProper(above: number, below: number): string {
  if (above === 0) return '';
  const common = divisor(above, below);
  return `${above / common}/${below / common}`;
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

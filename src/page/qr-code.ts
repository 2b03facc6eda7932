import encodeQR from 'qr';
import { inNamespace, SVG } from './element.ts';

/** Blank modules round a code. Source: ISO/IEC 18004 asks for four. */
const QUIET = 4;

/** A text as a QR code, black on white in any theme. */
export function createQRCode(text: string, label: string): Element {
  const modules = encodeQR(text, 'raw', { ecc: 'low', border: QUIET });
  const side = modules.length;
  const dark = modules.flatMap((row, y) =>
    row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : [])),
  );
  return inNamespace(
    SVG,
    'svg',
    { class: 'qr', viewBox: `0 0 ${side} ${side}`, role: 'img', 'aria-label': label },
    inNamespace(SVG, 'path', { fill: '#fff', d: `M0 0h${side}v${side}H0z` }),
    inNamespace(SVG, 'path', { fill: '#000', 'shape-rendering': 'crispEdges', d: dark.join('') }),
  );
}

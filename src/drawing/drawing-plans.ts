import type { Dimension } from '../units/dimension.ts';
import type { DrawingPlan, DrawingSlot } from './declaration.ts';

/*
 * What each kind of drawing is bound to. It stands apart from what draws, since a sheet is checked
 * against it before anything is drawn, and what draws is loaded after the first results.
 */

const LENGTH: Dimension = [1, 0, 0, 0];
const ANGLE: Dimension = [0, 0, 0, 1];

function length(name: string, doc: string): DrawingSlot {
  return { name, shape: 'quantity', dimension: LENGTH, doc };
}

function angle(name: string, doc: string): DrawingSlot {
  return { name, shape: 'quantity', dimension: ANGLE, doc };
}

function listOf(slot: DrawingSlot): DrawingSlot {
  return { ...slot, shape: 'list' };
}

function optional(slot: DrawingSlot): DrawingSlot {
  return { ...slot, optional: true };
}

const DIAL: DrawingPlan = {
  name: 'dial',
  doc: 'Dial readings at their clock positions, the wall of the bore as they show it, how far and which way it is off centre, and where the dowels are turned to. Angles are true; readings and offset are exaggerated alike.',
  slots: [
    listOf(angle('angles', 'clockwise from 12 o’clock')),
    listOf(length('readings', 'plunger in positive, dial on the crank')),
    optional(length('offset', 'fitted offset of the bore')),
    optional(angle('direction', 'high side, the bore’s centre lies opposite')),
    optional(length('dowel', 'offset of the dowels, 0 for plain ones')),
    optional(angle('dowel_direction', 'where their throw points')),
  ],
};

const JOINT_LINE: DrawingPlan = {
  name: 'joint_line',
  doc: 'Side view of gearbox, shaft and pinion with their slopes and the angles of both joints; thin, how they lay before. Lengths to scale; heights may be drawn larger, and the drawing then says how many times.',
  slots: [
    angle('gearbox_slope', 'slope of the gearbox, positive down to the rear'),
    angle('shaft_slope', 'slope of the shaft'),
    angle('pinion_slope', 'slope of the pinion'),
    length('shaft_length', 'from joint centre to joint centre'),
    optional(angle('front_angle', 'working angle of the front joint')),
    optional(angle('rear_angle', 'working angle of the rear joint')),
    optional(angle('before_gearbox_slope', 'slope of the gearbox before')),
    optional(angle('before_shaft_slope', 'slope of the shaft before')),
  ],
};

const PEDAL: DrawingPlan = {
  name: 'pedal',
  doc: 'A hanging pedal in side view and to scale: at rest, pressed on to its stop, with pushrod, bulkhead and stop. The front of the car is on the left.',
  slots: [
    length('pad_radius', 'pivot to the middle of the pad'),
    length('pad_travel', 'pad from rest to the stop, straight'),
    optional(length('rod_radius', 'pivot to the pushrod')),
    optional(length('stop_radius', 'pivot to where the stop meets the arm')),
    optional(length('stop_length', 'bulkhead to the face of the stop')),
    optional(length('floor', 'pad at rest to the floor')),
  ],
};

const TAIL_DROP: DrawingPlan = {
  name: 'tail_drop',
  doc: 'Side view, to scale: engine and gearbox as they stand and, thin, with the tail let down; what meets the bulkhead.',
  slots: [
    length('mount_to_tail', 'engine mounts back to the tail, level'),
    length('tail_below', 'how much lower than the mounts the tail stands'),
    length('head_reach', 'from the mounts back to the point that meets the bulkhead first'),
    length('head_height', 'that point above the mounts'),
    length('bulkhead_gap', 'from that point back to the bulkhead'),
    length('drop', 'how far the tail is let down'),
    optional(length('drop_limit', 'how far it may be let down')),
    optional(length('gap_left', 'what is left to the bulkhead then')),
  ],
};

const PILOT: DrawingPlan = {
  name: 'pilot',
  doc: 'Section along the axis, to scale: how far the spigot of the input shaft reaches into its bush in the crank, what is left beyond its tip and before its shoulder, and where the hub stands on the splines.',
  slots: [
    length('reach', 'the tip of the spigot past the rear face of the crank flange'),
    length('nose', 'diameter of the spigot'),
    length('spigot', 'length of the spigot, tip to shoulder'),
    length('bush_depth', 'rear edge of the bush below the flange'),
    length('bush_length', 'length of the bush'),
    length('bush_outer', 'outside of the bush'),
    length('bush_bore', 'bore of the bush'),
    length('bore_depth', 'hole in the crank, from the flange to its bottom'),
    length('engaged', 'spigot in the bush'),
    length('end_clearance', 'room beyond the tip'),
    length('shoulder_clearance', 'room between bush and shoulder'),
    optional(length('boss', 'diameter of the metal around the bush')),
    optional(length('spline_from_tip', 'where the splines begin behind the tip')),
    optional(length('spline_length', 'length of the splines')),
    optional(length('spline_outer', 'outside of the splines')),
    optional(length('flywheel', 'friction face of the flywheel behind the flange')),
    optional(length('hub_near', 'where the hub begins behind the flange')),
    optional(length('hub_length', 'length of the hub')),
    optional(length('hub_outer', 'outside of the hub')),
  ],
};

const DRIVESHAFT: DrawingPlan = {
  name: 'driveshaft',
  doc: 'Side view of a driveshaft at ride height, gearbox to the left, to scale: tail and slip yoke with the way that is left to its stop, both joint centres, the tube between its welds.',
  slots: [
    length('length', 'from joint centre to joint centre'),
    length('tube_diameter', 'outside diameter of the tube'),
    optional(length('tube_length', 'bare tube from weld to weld')),
    optional(length('front_weld', 'from the front joint’s centre to its weld')),
    optional(length('seal_to_joint', 'from the tail seal’s face to the front joint’s centre')),
    optional(length('engaged', 'splines engaged, drawn from the seal’s face into the tail')),
    optional(length('set_back', 'way of the slip yoke to its stop; below 0 it is past it')),
  ],
};

const TUNNEL_OPENING: DrawingPlan = {
  name: 'tunnel_opening',
  doc: 'The opening in the tunnel from above, front of the car at the top, to scale: the hole with round ends and its saw’s centres from the datum, the least hole, the bezel over it, the tunnel’s flat, and where the lever passes in each gear.',
  slots: [
    length('hole_front', 'the opening’s front edge, behind the datum; in front of it below 0'),
    length('hole_rear', 'its rear edge, behind the datum'),
    length('hole_width', 'its width, and the diameter of its round ends'),
    optional(length('hole_aside', 'its middle, right of the tunnel’s middle')),
    optional(length('least_length', 'the least hole, fore and aft')),
    optional(length('least_width', 'the least hole, across')),
    optional(length('bezel_front', 'the bezel’s front edge, behind the datum')),
    optional(length('bezel_rear', 'its rear edge, behind the datum')),
    optional(length('bezel_width', 'the bezel, across')),
    optional(length('bezel_aside', 'its middle, right of the tunnel’s middle')),
    optional(length('tunnel_width', 'flat of the tunnel’s top, across')),
    optional(
      listOf(length('lever_back', 'the lever at the tunnel in each gear, behind the datum')),
    ),
    optional(listOf(length('lever_right', 'the same, right of the tunnel’s middle'))),
    optional(listOf(length('lever_length', 'half of the lever there, fore and aft'))),
    optional(listOf(length('lever_width', 'half of the lever there, across'))),
    { name: 'gears', shape: 'texts', optional: true, doc: 'names of the gears' },
  ],
};

/** By name, as a sheet names them. */
export const PLANS = {
  dial: DIAL,
  joint_line: JOINT_LINE,
  pedal: PEDAL,
  tail_drop: TAIL_DROP,
  pilot: PILOT,
  driveshaft: DRIVESHAFT,
  tunnel_opening: TUNNEL_OPENING,
} as const;

export function findPlan(name: string): DrawingPlan | undefined {
  return Object.values(PLANS).find((plan) => plan.name === name);
}

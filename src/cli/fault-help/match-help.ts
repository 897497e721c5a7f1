/** Help on matching an old molding, on trial cuts, and on what a sorted sheet or an address refuses. */
import { degrees, inches, shop, told, type FaultHelp } from './example.ts';

export const MATCH_HELP = {
  'match.too-few-points': [
    'A handful of points doesn’t tell a curve.',
    told('points', 5, {}, 8),
    'Take a point every 1/8 in across, or more.',
  ],
  'match.too-many-points': [
    'So many points are a picture’s, not a profile’s.',
    told('points', 40_000, {}, 20_000),
    'A hundred points spread over the cove tell as much.',
  ],
  'match.two-columns': [
    'COVE.MATCH takes its points as one range, two columns wide.',
    told('points', 3, {}, 2),
    'Put how far across in the first column and how far into the wood in the second.',
  ],
  'match.point-half': [
    'A point has two numbers.',
    told('points', null),
    'Fill in the other number, or clear the row.',
  ],
  'match.face-too-short': [
    'The face line runs through two points of the flats, and these two lie on each other.',
    told('points', inches(1 / 16), {}, inches(1 / 4)),
    'Begin the trace on the flat on one side of the cove, and end it on the other.',
  ],
  'match.no-depth': [
    'All points lie on the face: there is no cove in them.',
    told('points', inches(1 / 64), {}, inches(1 / 32)),
    'Look whether the columns are the right way round.',
  ],
  'match.both-sides': [
    'Points on both sides of the face leave open which side is wood.',
    told('points', inches(1 / 4), { deep: inches(1 / 2) }),
    'The first and the last point must lie on the flats.',
  ],
  'match.crosses': [
    'The way from point to point crosses itself, which no profile does.',
    told('points', null),
    'Give the points in order along the profile.',
  ],
  'match.too-little': [
    'A part of a cove fits many coves.',
    told('points', inches(1.25), {}, inches(2.1)),
    'Trace it from edge to edge.',
  ],
  'match.deep-side': [
    'Which side of the trace is deep decides which end of the board goes toward the far rail.',
    told('points', 'right'),
    'Lay the board so that its deep side lies toward the far rail.',
  ],
  'match.misses': [
    'No setting of this blade comes nearer to these points.',
    told('points', inches(1 / 20), { point: 14, leaves: 'too much wood' }, inches(1 / 32)),
    'Scrape what is left, try another blade, or cut the blank at two settings.',
  ],
  'match.two-settings': [
    'The same blank may be cut at two settings, one after the other: the second takes what the first left.',
    told('points', inches(1 / 90), {
      approach: degrees(25.4),
      tilt: degrees(8.4),
      height: inches(0.865),
      isMirrored: true,
      between: inches(0.01),
    }),
    'Cut all blanks at the first, then set the saw again.',
  ],
  'match.upright': [
    'The trace is as near with the blade upright, and an upright blade is easier to set.',
    told('tilt', degrees(4)),
    'Trace more points where the tilt matters to you.',
  ],
  'match.interval': [
    'Points are never measured exactly, so the angle is known to lie between two.',
    told('approach', degrees(31.2), {}, degrees(32.1)),
    'More points, more evenly spread, bring them together.',
  ],
  'match.not-told-waves': [
    'Misses that go up and down in long waves are no chance, so nothing is said of chance.',
    told('points', null),
    'Trace again, or look at the farthest miss alone.',
  ],
  'match.not-told-paint': [
    'Paint lies of unknown thickness on the molding.',
    told('points', null),
    'Scrape a place clean and trace there.',
  ],
  'match.not-told-limit': [
    'The nearest setting stands at the tilt’s stop or the steepest approach.',
    told('points', null),
    'Another blade may do it within the limits.',
  ],
  'match.not-told-points': [
    'So few points, or so close together, tell a setting but not how sure it is.',
    told('points', null),
    'Trace more points from edge to edge.',
  ],
  'match.doubles': [
    'A point on top of the one before tells nothing new.',
    told('points', 3),
    'Nothing need be done.',
  ],
  'match.reordered': [
    'The points were in no order along the profile, so they were sorted across it.',
    told('points', null),
    'Look at the answer’s farthest miss: a wall that leans over needs its points in order.',
  ],
  'trial.sizes': [
    'A cove is written as its width, depth and off-center with x between them.',
    told({ name: 'AIMED' }, '3'),
    'Write 3 x 5/8, or 3 x 5/8 x 3/8.',
  ],
  'trial.no-set-up': [
    'A trial is compared with the set-up that it was cut on, and for this cove there is none.',
    told('cove', null),
    'Size a cove that can be made.',
  ],
  'trial.not-this-blade': [
    'No setting of this blade leaves a cove of the measured sizes.',
    told('measured', null),
    'Measure width at the face, depth from the face, both across the feed.',
  ],
  'trial.another-cove': [
    'It differs by so much that another set-up must have been on the saw.',
    told('measured', degrees(9), { tilt: degrees(2), height: inches(1 / 16) }),
    'Compare the page that was followed with the cove that is wanted.',
  ],
  'trial.right': [
    'The trial is as near as it was measured.',
    told('measured', inches(1 / 64)),
    'Cut the blanks.',
  ],
  'trial.likely': [
    'Each thing that is set is tried alone: this one explains all three sizes.',
    told('measured', inches(1 / 32), { cause: 'height', more: 'more' }, inches(1 / 64)),
    'Look at that first, then cut another trial.',
  ],
  'trial.several': [
    'None of approach, tilt, height and blade explains all three sizes by itself.',
    told('measured', null),
    'Move all three by what the answer says, and cut another trial.',
  ],
  'trial.sure': [
    'What is measured is never exact, so neither is what to move.',
    told('measured', degrees(0.4), { tilt: degrees(1), height: inches(1 / 64) }, inches(1 / 64)),
    'Measure finer, or move and cut another trial.',
  ],
  'trial.other-side': [
    'The deep side of the trial was the near one: the blade leaned the other way.',
    told('tilt', degrees(0.7)),
    'Square the blade to the table, then set the tilt.',
  ],
  'address.unreadable': [
    'The codes on Set-ups lead a phone to an address, and this is none that a phone can open.',
    shop('page address,localhost', 'page address,https://example.org/coves/'),
  ],
  'saw-code.none': [
    'saw.html shows the set-up that a code holds, and it was opened without one.',
    told('sawCode', null),
    'Scan the code on a page of Set-ups.',
  ],
  'saw-code.damaged': [
    'The code’s own check doesn’t agree with it, so no number of it is shown.',
    told('sawCode', null),
    'Scan it again, or read the page.',
  ],
  'saw-code.older': [
    'The page was printed by an earlier version.',
    told('sawCode', null),
    'Read the page, or print it anew.',
  ],
  'saw-code.newer': [
    'The page was printed by a later version than saw.html is of.',
    told('sawCode', null),
    'Load saw.html again, or read the page.',
  ],
  'saw-code.other-numbers': [
    'Worked out again, the set-up comes to other numbers than the code holds.',
    told('sawCode', 'Reading cove'),
    'Read the page, or print it anew.',
  ],
  'grid.sort-merged': [
    'Rows with joined cells can’t change places one by one.',
    told({ name: 'Sort' }, 'B4'),
    'Take the joined cells apart first, or filter instead.',
  ],
  'grid.sort-spilled': [
    'One formula fills several of the rows.',
    told({ name: 'Sort' }, 'B4'),
    'Filter instead, or give each row a formula of its own.',
  ],
} as const satisfies Readonly<Record<string, FaultHelp>>;

/**
 * The section of a made profile by polygon clipping (manifold-3d): what the disc sweeps out of the blank
 * as the board is fed, against the blank's edges and what a crown's back bevels take away. The disc is points in space; nothing of the core's
 * formulas is in it. Against it stands what the plan says: flats, web, wood, and whether to cut at all.
 */
import { beforeAll, expect, test } from '@jest/globals';
import Module, { type CrossSection, type ManifoldToplevel } from 'manifold-3d';
import Fraction from 'fraction.js';
import { degrees } from '../../src/core/units/angle.ts';
import { PROFILE_CELLS, type CoveProfile } from '../../src/planning/job.ts';
import { planSetUp } from '../../src/planning/plan-setup.ts';
import { checkCove } from '../../src/core/cove/feasibility.ts';
import { count } from '../deep.ts';
import { seededNumbers } from '../seeded-numbers.ts';
import { seeDisc } from '../core/cove/sampled-disc.ts';
import { jobOf } from './make-job.ts';

const AROUND = 720;
/** What a disc of 720 sides misses of the circle, twice over. */
const TOLERANCE = 4e-4;

let solid: ManifoldToplevel;
beforeAll(async () => {
  solid = await Module();
  solid.setup();
});

interface Section {
  readonly web: number;
  readonly nearWood: number;
  readonly farWood: number;
  /** Of a crown, by the edge on the wall; below 0 a bevel cuts into the cove. */
  readonly bevelWood?: { readonly near: number; readonly far: number };
}

type Point = [across: number, level: number];

/** Made of clipped polygons: the blank's near edge at 0, its face at level 0. */
function clip(
  profile: CoveProfile,
  disc: Parameters<typeof seeDisc>[0],
  nearFlat: number,
): Section {
  const { CrossSection } = solid;
  const width = Number(profile.blankWidth);
  const thickness = Number(profile.blankThickness);
  const kept: { delete(): void }[] = [];
  const keep = <One extends { delete(): void }>(one: One): One => {
    kept.push(one);
    return one;
  };
  const swept = keep(
    CrossSection.hull([seeDisc(disc, AROUND).map(({ across, level }): Point => [across, level])]),
  );
  const strip = (from: number, to: number): CrossSection =>
    keep(CrossSection.square([200, to - from], false).translate([-100, from]));
  // The blank's near edge lies the near flat before the cut's own edge at the table.
  const atFace = keep(swept.intersect(strip(0, 1e-5))).bounds();
  const placed = keep(swept.translate([nearFlat - atFace.min[0], 0]));
  const cove = keep(placed.intersect(strip(0, 2 * thickness)));
  const { min, max } = cove.bounds();
  const measured = {
    web: thickness - max[1],
    nearWood: min[0],
    farWood: width - max[0],
  };
  const spring = profile.spring === undefined ? undefined : (profile.spring * Math.PI) / 180;
  const points = cove.toPolygons().flat() as Point[];
  const beside = (bevel: number, edge: 'near' | 'far'): number => {
    // The waste: from the face's arris in over the back, as a triangle; wood is how far the cove lies off it.
    const reach = 50;
    const lean: Point = [reach * Math.cos(bevel), reach * Math.sin(bevel)];
    const [x, way] = edge === 'near' ? [0, 1] : [width, -1];
    const waste: Point[] = [
      [x, 0],
      [x + way * lean[0], lean[1]],
      [x - way * reach, lean[1]],
      [x - way * reach, 0],
    ];
    const off = points.map(
      ([across, level]) => way * (across - x) * Math.sin(bevel) - level * Math.cos(bevel),
    );
    const wood = Math.min(...off);
    const cutAway = keep(new CrossSection([way === 1 ? waste.reverse() : waste], 'NonZero'));
    const into = keep(cutAway.intersect(cove)).area();
    if (wood > TOLERANCE) expect(into).toBe(0);
    if (wood < -0.01) expect(into).toBeGreaterThan(0);
    return wood;
  };
  const section =
    spring === undefined
      ? measured
      : {
          ...measured,
          bevelWood: {
            near: Math.min(beside(spring, 'near'), beside(Math.PI / 2 - spring, 'far')),
            far: Math.min(beside(Math.PI / 2 - spring, 'near'), beside(spring, 'far')),
          },
        };
  for (const one of kept) one.delete();
  return section;
}

const NO_PLACE = { sheet: 'Profiles', cell: 'A2' };
const NO_CELLS = Object.fromEntries(
  PROFILE_CELLS.map((heading) => [heading, NO_PLACE]),
) as CoveProfile['cells'];
const to64th = (inches: number): Fraction => new Fraction(Math.round(inches * 64), 64);

/** @param nearFlat undefined where the cove sits midway */
function profileOf(
  cove: CoveProfile['cove'],
  blank: { width: Fraction; thickness: Fraction; nearFlat?: Fraction },
  spring?: number,
): CoveProfile {
  const sizes = {
    name: 'Made',
    cove,
    blankWidth: blank.width,
    blankThickness: blank.thickness,
    ...(blank.nearFlat === undefined ? {} : { nearFlat: blank.nearFlat }),
    place: { at: 'ceiling', isSaid: false, cell: NO_PLACE } as const,
    species: '',
    thicknessClass: '',
    note: '',
    where: NO_PLACE,
    cells: NO_CELLS,
  };
  return spring === undefined
    ? { ...sizes, make: 'cove' }
    : { ...sizes, make: 'crown cove', spring: degrees(spring) };
}

const WOOD_CODES = /undercut-|web-too-thin|flat-too-narrow|bevel-too-near/u;

test('what the plan says of wood is what clipping the section leaves', () => {
  const { shop } = jobOf({
    shop: 'Setting,Value\ngreatest height upright,3 1/8\ngreatest height at 45,2 1/8\nleast flat,1/8',
  });
  const blade = { diameter: 10, kerf: 0.125 };
  const next = seededNumbers(31_337);
  const seen = { made: 0, refused: 0, crowns: 0, undercut: 0, broken: 0 };
  for (let drawn = 0; drawn < count(2000, 200); drawn++) {
    const width = Number(to64th(1 + 3.5 * next()));
    const depth = Number(to64th(0.25 + 1.5 * next()));
    const offCenter = next() < 0.3 ? 0 : Number(to64th((width / 2) * next() * 0.9));
    const cove = { width, depth, offCenter };
    const flats = { near: 0.05 + 0.6 * next(), far: 0.05 + 0.8 * next() };
    const spring = next() < 0.4 ? Math.round(30 + 30 * next()) : undefined;
    const midway = next() < 0.4;
    const blank = {
      width: to64th(width + flats.near + (midway ? flats.near : flats.far)),
      thickness: to64th(depth + 0.1 + 0.6 * next()),
      ...(midway ? {} : { nearFlat: to64th(flats.near) }),
    };
    const profile = profileOf(cove, blank, spring);
    const { setUp, faults, cautions } = planSetUp(profile, shop);
    const { setting } = checkCove(cove, blade);
    if (setting === undefined || faults.some(({ code }) => !WOOD_CODES.test(code))) continue;
    const near = midway ? (Number(blank.width) - width) / 2 : Number(blank.nearFlat);
    const section = clip(profile, { ...blade, ...setting }, near);
    const bestBevel = Math.max(
      section.bevelWood?.near ?? Infinity,
      section.bevelWood?.far ?? Infinity,
    );
    const spare = Math.min(
      section.web - 0.25,
      section.nearWood - 0.125,
      section.farWood - 0.125,
      bestBevel - 0.125,
    );
    const said = [drawn, faults.map(({ code }) => code), spare];
    if (setUp === undefined) {
      seen.refused += 1;
      expect([said, spare < TOLERANCE]).toEqual([said, true]);
      if (faults.some(({ code }) => code.startsWith('cove.undercut-'))) seen.undercut += 1;
    } else {
      seen.made += 1;
      expect([said, spare > -TOLERANCE]).toEqual([said, true]);
      expect(Math.abs(setUp.web - section.web)).toBeLessThan(TOLERANCE);
      if (setUp.bevelWood !== undefined && section.bevelWood !== undefined) {
        seen.crowns += 1;
        for (const edge of ['near', 'far'] as const) {
          const apart = Math.abs(setUp.bevelWood[edge] - section.bevelWood[edge]);
          expect([said, edge, apart < TOLERANCE]).toEqual([said, edge, true]);
        }
        const oneWay = Math.min(section.bevelWood.near, section.bevelWood.far) < 0.125 - TOLERANCE;
        if (oneWay) expect(cautions.map(({ code }) => code)).toContain('crown.bevel-one-way');
      }
    }
    // The blank that a crown's fault names would do.
    const tooNear = faults.find(({ code }) => code === 'crown.bevel-too-near');
    if (tooNear === undefined) continue;
    seen.broken += 1;
    const ways = tooNear.details as Record<string, { inches: number } | undefined>;
    const better = profileOf(
      cove,
      {
        width: new Fraction(ways['widthThatWould']!.inches),
        thickness: blank.thickness,
        ...(midway ? {} : { nearFlat: new Fraction(ways['nearFlat']!.inches) }),
      },
      spring,
    );
    expect([said, planSetUp(better, shop).faults.map(({ message }) => message)]).toEqual([
      said,
      [],
    ]);
  }
  expect(seen.made).toBeGreaterThan(20);
  expect(Math.min(seen.refused, seen.crowns, seen.undercut, seen.broken)).toBeGreaterThan(3);
});

// Measured on sections, spring 38, a 10 in blade of 1/8 kerf, flats alike [D]; the last is its web.
test.each([
  [3.25, 0.75, 3.5, 1, 0.047],
  [3, 1, 3.25, 1.25, -0.091],
  [2.5, 1, 2.75, 1.25, -0.162],
  [4.25, 0.875, 5.25, 1.125, 0.25],
])('a crown %d x %d in %d x %d leaves %d at the least', (width, depth, wide, thick, least) => {
  const blank = { width: new Fraction(wide), thickness: new Fraction(thick) };
  const profile = profileOf({ width, depth, offCenter: 0 }, blank, 38);
  const { setting } = checkCove(profile.cove, { diameter: 10, kerf: 0.125 });
  const disc = { diameter: 10, kerf: 0.125, ...setting! };
  const { web, bevelWood } = clip(profile, disc, (wide - width) / 2);
  expect(Math.min(web, bevelWood!.near, bevelWood!.far)).toBeCloseTo(least, 3);
  const { shop } = jobOf({ shop: 'Setting,Value\ngreatest height upright,3 1/8' });
  const { setUp, faults } = planSetUp(profile, shop);
  if (least > 0.125) {
    expect(Math.min(setUp!.web, setUp!.bevelWood!.near)).toBeCloseTo(least, 3);
  } else {
    expect(faults.map(({ code }) => code)).toEqual(['crown.bevel-too-near']);
    const { inches } = faults[0]!.given as { inches: number };
    expect(inches).toBeCloseTo(least, 3);
    const words = least < 0 ? /would cut .* into the cove/u : /would leave .* of wood to the cove/u;
    expect(faults[0]!.message).toMatch(words);
  }
});

import { describe, expect, it } from 'vitest';
import {
  connectorFacesY,
  rearAperture,
  rearApertureBox,
  rearPanelInnerFaceY,
  traySurfaceAtLeastStandoffZ,
} from '../../geometry/standards/rear-aperture';

describe('rear aperture', () => {
  it.each([
    // microATX 1.2, figure 4 note and page 15; ATX 2.2, figure 4: printed millimetres
    ['bottomBelowSolderSide', 2.24],
    ['holeAToNearEdge', 131.98],
    ['connectorZoneWidth', 152.15],
    ['connectorZoneHeight', 37.34],
    ['keepOutRing', 2.54],
    ['largestCornerRadius', 0.99],
  ] as const)('%s is %d mm', (row, millimetres) => {
    expect(Math.abs(rearAperture[row].value - millimetres)).toBeLessThan(0.006);
  });

  it('is 158.75 x 44.45 (ATX 2.2 figure 4; SSI EEB 2011 figure 17)', () => {
    expect(rearAperture.width.value).toBeCloseTo(158.75, 9);
    expect(rearAperture.height.value).toBeCloseTo(44.45, 9);
    const { x, z } = rearApertureBox.value;
    expect(x[1] - x[0]).toBeCloseTo(158.75, 9);
    expect(z[1] - z[0]).toBeCloseTo(44.45, 9);
  });

  it('lies 7.52 from hole C toward the top edge (Mini-ITX Addendum 1.1 page 9; ATX 2.2 figure 4: 131.98 from A)', () => {
    // Hole C: 6.450 in, ATX 2.2 figure 3.
    expect(6.45 * 25.4 - rearApertureBox.value.x[1]).toBeCloseTo(7.52, 2);
    expect(rearApertureBox.value.x[0]).toBeCloseTo(-2.44, 2);
  });

  it('starts 3.81 below the component side (microATX 1.2 figure 4 note)', () => {
    expect(rearApertureBox.value.z[0]).toBeCloseTo(-3.81, 9);
    expect(rearApertureBox.value.z[1]).toBeCloseTo(40.64, 9);
  });

  it('agrees with the second datum of the bottom edge: 2.24 below the solder side (ATX 2.2 figure 4, within 0.25)', () => {
    expect(Math.abs(-rearApertureBox.value.z[0] - 1.57 - 2.24)).toBeLessThan(0.25);
  });

  it('puts the panel 12.27 and the connector faces 11.30 behind the hole row (ATX 2.2 figure 4; microATX 1.2 figure 5)', () => {
    expect(10.16 - rearPanelInnerFaceY.value).toBeCloseTo(12.27, 2);
    expect(10.16 - connectorFacesY.value).toBeCloseTo(11.3, 2);
  });

  it('stands 4.11 above the tray on least standoffs (independently reported as 4.1148)', () => {
    expect(rearApertureBox.value.z[0] - traySurfaceAtLeastStandoffZ.value).toBeCloseTo(4.1148, 3);
  });
});

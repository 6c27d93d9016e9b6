/** The one figure by which a builder tells two parts of a kind apart. */
import { nominal, nominalOr, type PartSpec } from '../../geometry';

/** '155.2 mm tall', 'SFX-L, 850 W': short, with its unit. */
export function keyDimension(spec: PartSpec): string {
  switch (spec.kind) {
    case 'enclosure': {
      const { length, height, trayToSide, behindTray } = spec.interior;
      const litres = (nominal(length) * nominal(height) * (nominal(trayToSide) + nominal(behindTray))) / 1e6;
      return `${litres.toFixed(1)} L inside`;
    }
    case 'board':
      return spec.form;
    case 'processor':
      return `${nominal(spec.class)} W`;
    case 'cooler':
      return `${nominal(spec.height)} mm tall`;
    case 'memory':
      return `${nominalOr(spec.height, 31.25)} mm tall`;
    case 'drive':
      return spec.form === 'M.2' ? `M.2, ${spec.length} mm` : `${spec.form} inch, ${nominal(spec.height)} mm`;
    case 'card':
      return `${nominal(spec.length)} mm, ${spec.bracketSlots === 1 ? '1 slot' : `${spec.bracketSlots} slots`}`;
    case 'supply':
      return `${spec.form}, ${nominal(spec.watts)} W`;
    case 'fan':
      return `${spec.size} × ${nominalOr(spec.thickness, 25)} mm`;
    case 'radiator':
      return `row ${spec.row}, ${nominalOr(spec.thickness, 27)} mm thick`;
    case 'adapter':
      return spec.form;
  }
}

/** The gaps a builder wants, by kind of pair: each with its default and its reason, and edited here. */
import { useMemo, useState } from 'react';
import { kindName, type WantedGapSetting, wantedGapSettings } from '../../../geometry';
import { undo } from '../../store/plan-store';
import { usePlanStore, useSolutionStore, useUndoSteps } from '../../store/use-store';
import { wantGap } from '../../store/wanted-gap';
import { Dialog } from '../../ui/dialog';
import { NumberField } from '../../ui/number-field';
import { formatMillimetres } from '../../ui/numbers';
import { defaultWords, pairWords, reasonWords } from './gap-words';
import './wanted-gaps.css';

export function WantedGapsDialog({ onClose }: { readonly onClose: () => void }) {
  const settings = useMemo(wantedGapSettings, []);
  const { past } = useUndoSteps();
  const [before] = useState(past);
  return (
    <Dialog title="Wanted gaps" onClose={onClose} wide>
      <section
        className="dialog-body"
        aria-label="Wanted gaps by kind of pair"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be within reach of the keyboard.
        tabIndex={0}
      >
        <p className="quiet">
          How much room you want between each kind of pair in this plan. A smaller gap is pointed out, and the
          largest sizes that still go in keep it.
        </p>
        <table className="wanted-gaps">
          <thead>
            <tr>
              <th scope="col">From, to</th>
              <th scope="col">Wanted</th>
              <th scope="col">By default, and why</th>
              <th scope="col" className="number">
                Tightest now, mm
              </th>
            </tr>
          </thead>
          {[...groupedByKind(settings)].map(([kind, ofKind]) => (
            <tbody key={kind}>
              <tr>
                <th scope="rowgroup" colSpan={4} className="heading">
                  {kindName(kind)}
                </th>
              </tr>
              {ofKind.map((setting) => (
                <GapRow key={setting.rule} setting={setting} />
              ))}
            </tbody>
          ))}
        </table>
      </section>
      <div className="dialog-actions">
        <button type="button" className="button" disabled={past <= before} onClick={undo}>
          Undo
        </button>
      </div>
    </Dialog>
  );
}

function groupedByKind(settings: readonly WantedGapSetting[]) {
  const groups = new Map<WantedGapSetting['kind'], WantedGapSetting[]>();
  for (const setting of settings) {
    const group = groups.get(setting.kind);
    if (group) group.push(setting);
    else groups.set(setting.kind, [setting]);
  }
  return groups;
}

function GapRow({ setting }: { readonly setting: WantedGapSetting }) {
  const { rule, byDefault } = setting;
  const own = usePlanStore((state) => state.plan.gaps?.[rule]);
  const tightest = useSolutionStore(
    ({ solution }) => solution.clearances.find((clearance) => clearance.rule === rule)?.millimetres,
  );
  return (
    <tr data-own={own !== undefined}>
      <th scope="row">{pairWords(rule)}</th>
      <td>
        <NumberField
          label={`Wanted gap, ${rule}`}
          value={own ?? byDefault}
          unit="mm"
          min={0}
          max={200}
          step={0.5}
          onChange={(value) => wantGap(rule, value)}
        />
        {own !== undefined && (
          <button
            type="button"
            className="button plain small"
            aria-label={`Default for ${rule}`}
            onClick={() => wantGap(rule, undefined)}
          >
            Default
          </button>
        )}
      </td>
      <td>
        {defaultWords(setting)} <span className="quiet">{reasonWords(setting)}</span>
      </td>
      <td className="number">{tightest === undefined ? '–' : formatMillimetres(tightest)}</td>
    </tr>
  );
}

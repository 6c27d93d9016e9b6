/** The panels left and right of the drawing. */

import { Tabs } from '../ui/tabs';
import { ClearanceTable } from '../views/clearances/clearance-table';
import { FindingsList } from '../views/findings/findings-list';
import { SelectionDetails } from '../views/part-details/selection-details';
import { PlanTree } from '../views/plan-tree/plan-tree';
import { LazyShelf } from './lazy-shelf';
import { useNumberTabs } from './use-number-tabs';

export function LeftPanel() {
  return (
    <aside className="left-panel" aria-label="Plan and shelf">
      <section className="panel-tree" aria-labelledby="tree-heading">
        <h2 id="tree-heading" className="heading panel-heading">
          Plan
        </h2>
        <PlanTree />
      </section>
      <section className="panel-shelf" aria-labelledby="shelf-heading">
        <h2 id="shelf-heading" className="heading panel-heading">
          Shelf
        </h2>
        <LazyShelf />
      </section>
    </aside>
  );
}

export function RightPanel() {
  const { tabs, chosen, choose } = useNumberTabs(true);
  return (
    <aside className="right-panel" aria-label="Clearances and findings">
      <Tabs label="Numbers" tabs={tabs} chosen={chosen} onChoose={choose}>
        {chosen === 'findings' ? <FindingsList /> : <ClearanceTable />}
      </Tabs>
      <section className="panel-details" aria-label="Details">
        <SelectionDetails />
      </section>
    </aside>
  );
}

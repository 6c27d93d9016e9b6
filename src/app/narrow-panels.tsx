/** On a narrow screen: everything round the drawing as tabs under it. */
import { Tabs } from '../ui/tabs';
import { ClearanceTable } from '../views/clearances/clearance-table';
import { FindingsList } from '../views/findings/findings-list';
import { SelectionDetails } from '../views/part-details/selection-details';
import { PlanTree } from '../views/plan-tree/plan-tree';
import { LazyShelf } from './lazy-shelf';
import { useNumberTabs } from './use-number-tabs';

const MORE_TABS = [
  { id: 'tree', label: 'Tree' },
  { id: 'shelf', label: 'Shelf' },
  { id: 'details', label: 'Details' },
] as const;

export function NarrowPanels() {
  const { tabs, chosen, choose } = useNumberTabs(false);
  return (
    <aside className="narrow-panels" aria-label="Plan, shelf and numbers">
      <Tabs label="Panels" tabs={[...tabs, ...MORE_TABS]} chosen={chosen} onChoose={choose}>
        {chosen === 'clearances' && <ClearanceTable />}
        {chosen === 'findings' && <FindingsList />}
        {chosen === 'tree' && <PlanTree />}
        {chosen === 'shelf' && <LazyShelf />}
        {chosen === 'details' && <SelectionDetails />}
      </Tabs>
    </aside>
  );
}

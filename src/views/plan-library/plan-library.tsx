/** The person's plans, the example plans, and the way in and out by file. */
import { useCallback, useEffect, useState } from 'react';
import { whyNotSaved } from '../../store/plan-database';
import { exportPlanFile } from '../../store/plan-file';
import { listPlans, type PlanListing } from '../../store/plan-library';
import { openNewPlan } from '../../store/plan-session';
import { emptyPlan, planStore } from '../../store/plan-store';
import { usePlanStore } from '../../store/use-store';
import { Dialog } from '../../ui/dialog';
import { ExampleList } from './example-list';
import { ImportPlan } from './import-plan';
import { OwnPlans } from './own-plans';
import './plan-library.css';

export function PlanLibrary({ onClose }: { readonly onClose: () => void }) {
  const [plans, setPlans] = useState<readonly PlanListing[]>([]);
  const [fault, setFault] = useState<string>();
  const openId = usePlanStore((state) => state.planId);
  const refresh = useCallback(async () => {
    try {
      setPlans(await listPlans());
    } catch (error) {
      setFault(
        `Your plans cannot be listed: ${whyNotSaved(error)}. You can still export the open one to a file.`,
      );
    }
  }, []);
  useEffect(() => void refresh(), [refresh]);
  return (
    <Dialog title="Plans" wide onClose={onClose}>
      <div className="dialog-body">
        <div className="buttons">
          <button
            type="button"
            className="button"
            onClick={() => {
              openNewPlan(emptyPlan);
              onClose();
            }}
          >
            New plan
          </button>
          <ImportPlan onDone={onClose} />
          <button type="button" className="button" onClick={() => exportPlanFile(planStore.getState().plan)}>
            Export the open plan
          </button>
        </div>
        {fault !== undefined && (
          <p className="fault" role="alert">
            {fault}
          </p>
        )}
        <section aria-labelledby="own-plans">
          <h3 id="own-plans" className="heading">
            Your plans
          </h3>
          <OwnPlans plans={plans} openId={openId} onChanged={refresh} onDone={onClose} />
        </section>
        <section aria-labelledby="example-plans">
          <h3 id="example-plans" className="heading">
            Example plans
          </h3>
          <ExampleList onDone={onClose} />
        </section>
      </div>
    </Dialog>
  );
}

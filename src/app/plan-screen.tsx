/** The plan view: tree and shelf on the left, the drawing in the middle, the numbers on the right. */
import { useState } from 'react';
import { useMediaQuery } from '../ui/use-media-query';
import { TopBar } from '../views/top-bar/top-bar';
import { Drawing } from './drawing';
import { NarrowPanels } from './narrow-panels';
import { OpenSheet } from './open-sheet';
import { useKeys } from './use-keys';
import { useStudy } from './use-study';
import { LeftPanel, RightPanel } from './wide-panels';
import './plan-screen.css';

export function PlanScreen() {
  const [keysShown, setKeysShown] = useState(false);
  const narrow = useMediaQuery('(max-width: 720px)');
  useKeys(() => setKeysShown(true));
  useStudy();
  return (
    <div className="plan-screen">
      <TopBar keysShown={keysShown} onShowKeys={setKeysShown} />
      <main className="plan-main">
        <Drawing />
      </main>
      {narrow ? (
        <NarrowPanels />
      ) : (
        <>
          <LeftPanel />
          <RightPanel />
        </>
      )}
      <OpenSheet />
    </div>
  );
}

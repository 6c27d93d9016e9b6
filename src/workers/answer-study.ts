/** Asks the kernel. Runs in the worker, or on the page where there is none. */
import {
  allWorthMeasuring,
  dimensionChain,
  type Plan,
  stackUpOf,
  stackUpsOf,
  upgradeEnvelope,
  waysToChange,
} from '../../geometry';
import { keepIdentity } from './keep-identity';
import type { StudyAnswer, StudyRequest } from './study-request';

let last: Plan | undefined;

export function answerStudy(request: StudyRequest): StudyAnswer<StudyRequest> {
  last = keepIdentity(last, request.plan);
  switch (request.topic) {
    case 'stack-ups':
      return stackUpsOf(last);
    case 'stack-up':
      return stackUpOf(last, request.clearance);
    case 'chain':
      return dimensionChain(last, request.clearance);
    case 'envelope':
      return upgradeEnvelope(last);
    case 'worth measuring':
      return allWorthMeasuring(last);
    case 'ways to change':
      return waysToChange(last, request.target, request.shelf);
  }
}

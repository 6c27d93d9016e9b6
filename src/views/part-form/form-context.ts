/** What every row of a form may want to know about the part as it stands. */
import { createContext, useContext } from 'react';
import type { StandingIn } from '../../../geometry';

export interface FormSurroundings {
  /** Published values that stand in for what the sheet leaves out, by path. */
  readonly standingIn: StandingIn;
}

const FormContext = createContext<FormSurroundings>({ standingIn: {} });

export const FormProvider = FormContext.Provider;

export function useFormSurroundings(): FormSurroundings {
  return useContext(FormContext);
}

import type { SeamsPhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';
import { layouts } from './layouts.ts';
import { lineFaults, panelFaults, regionFaults } from './seam-faults.ts';
import { seamNames } from './seam-names.ts';

export const seams: Entries<SeamsPhrases> = {
  ...layouts,
  ...seamNames,
  ...lineFaults,
  ...panelFaults,
  ...regionFaults,
};

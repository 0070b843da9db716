import MDXComponents from '@theme-original/MDXComponents';
import { KeepPanel } from '../components/parts/KeepPanel.js';
import { SubjectCalculations } from '../components/parts/SubjectCalculations.js';

export default { ...MDXComponents, KeepPanel, SubjectCalculations };

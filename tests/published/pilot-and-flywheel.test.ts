import { testPublished } from '../support/published.ts';

testPublished('pilot-and-flywheel.json');

import { testPublished } from '../support/published.ts';

testPublished('universal-joint.json');

export { type Follower, type FollowHandlers, followProject } from './follow-project.ts';

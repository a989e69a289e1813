export { type Follower, type FollowHandlers, followProject } from './follow-project.ts';
export { pictureChoices } from './picture-choices.ts';

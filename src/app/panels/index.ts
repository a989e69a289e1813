import './styles/index.css';

export { SceneBoundary } from './scene-boundary.tsx';
export { Workroom } from './workroom.tsx';
export { type Demo, type Services, WorkroomProvider } from './workroom-context.tsx';

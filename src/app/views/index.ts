import './styles/index.css';

export { Workroom } from './frame/workroom.tsx';
export { WorkroomProvider } from './parts/workroom-context.tsx';

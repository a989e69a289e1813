import './styles/index.css';

export { Workroom } from './frame/workroom.tsx';
export { type Demo, type FileWish, type Services, WorkroomProvider } from './parts/workroom-context.tsx';

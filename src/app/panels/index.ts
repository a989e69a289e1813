import './styles/index.css';

export { Workroom } from './workroom.tsx';
export { type Demo, type FileWish, type Services, WorkroomProvider } from './workroom-context.tsx';

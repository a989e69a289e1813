import { useRef, useState } from 'react';
import type { Theme } from '../store/index.ts';
import { DemoGallery } from './demo-gallery.tsx';
import { EarlierStates } from './earlier-states.tsx';
import { Icon } from './icon.tsx';
import { openFile } from './open-file.ts';
import { useActions, useApp, useHistory, useServices } from './workroom-context.tsx';

/** Name, files, undo and redo, units and light. */
export function TopBar() {
  return (
    <header className="top-bar">
      <h1 className="brand">
        <Icon name="mark" />
        <span>Loftseam</span>
      </h1>
      <ProjectName />
      <div className="top-tools">
        <FileTools />
        <HistoryTools />
        <UnitSwitch />
        <ThemeSwitch />
      </div>
    </header>
  );
}

function ProjectName() {
  const name = useApp((state) => state.project?.name ?? '');
  const actions = useActions();
  return (
    <label className="project-name">
      <span className="visually-hidden">Name of this project</span>
      <input
        value={name}
        maxLength={200}
        placeholder="Untitled"
        spellCheck={false}
        onFocus={actions.beginEdit}
        onBlur={actions.endEdit}
        onChange={(event) => actions.renameProject(event.target.value)}
      />
    </label>
  );
}

function FileTools() {
  const [isGalleryOpen, setIsGalleryOpen] = useState(false);
  const [isEarlierOpen, setIsEarlierOpen] = useState(false);
  const input = useRef<HTMLInputElement>(null);
  const services = useServices();
  const actions = useActions();
  return (
    <div className="tool-group">
      <button type="button" onClick={() => setIsGalleryOpen(true)}>
        <Icon name="bodies" /> <span>Demo bodies</span>
      </button>
      <button type="button" onClick={() => input.current?.click()}>
        <Icon name="open" /> <span>Open</span>
      </button>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label="Open a project file"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) void openFile(file, services, actions);
        }}
      />
      <button type="button" onClick={() => void services.saveProject()}>
        <Icon name="save" /> <span>Save</span>
      </button>
      <button
        type="button"
        aria-label="Bodies and earlier states"
        title="Bodies and earlier states"
        onClick={() => setIsEarlierOpen(true)}
      >
        <Icon name="earlier" />
      </button>
      {isEarlierOpen && <EarlierStates onClose={() => setIsEarlierOpen(false)} />}
      {isGalleryOpen && <DemoGallery onClose={() => setIsGalleryOpen(false)} />}
    </div>
  );
}

function HistoryTools() {
  const actions = useActions();
  const { undo, redo } = useHistory();
  return (
    <div className="tool-group">
      <button
        type="button"
        aria-label={undo ? `Undo: ${undo}` : 'Undo'}
        title={undo ? `Undo: ${undo}` : 'Nothing to undo'}
        disabled={undo === null}
        onClick={actions.undo}
      >
        <Icon name="undo" />
      </button>
      <button
        type="button"
        aria-label={redo ? `Redo: ${redo}` : 'Redo'}
        title={redo ? `Redo: ${redo}` : 'Nothing to redo'}
        disabled={redo === null}
        onClick={actions.redo}
      >
        <Icon name="redo" />
      </button>
    </div>
  );
}

function UnitSwitch() {
  const units = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  return (
    <fieldset className="segments">
      <legend className="visually-hidden">Units</legend>
      {(['cm', 'in'] as const).map((unit) => (
        <label key={unit}>
          <input
            type="radio"
            name="units"
            checked={units === unit}
            onChange={() => actions.setUnits(unit)}
            aria-label={unit === 'cm' ? 'Centimetres' : 'Inches'}
          />
          <span>{unit}</span>
        </label>
      ))}
    </fieldset>
  );
}

const NEXT_THEME: Readonly<Record<Theme, Theme>> = { system: 'light', light: 'dark', dark: 'system' };
const THEME_NAMES: Readonly<Record<Theme, string>> = {
  system: 'as this computer',
  light: 'light',
  dark: 'dark',
};

function ThemeSwitch() {
  const theme = useApp((state) => state.theme);
  const actions = useActions();
  return (
    <button
      type="button"
      className="icon-only"
      aria-label={`Light: ${THEME_NAMES[theme]}. Change to ${THEME_NAMES[NEXT_THEME[theme]]}`}
      title={`Light: ${THEME_NAMES[theme]}`}
      onClick={() => actions.setTheme(NEXT_THEME[theme])}
    >
      <Icon name={theme === 'system' ? 'lamp' : theme === 'light' ? 'sun' : 'moon'} />
    </button>
  );
}

import { useRef } from 'react';
import { LANGUAGE_NAMES, LANGUAGES, type Language } from '../../../language/index.ts';
import type { Theme } from '../../store/index.ts';
import { LateDialog } from '../bodies/late-dialog.tsx';
import { Icon, type IconName } from '../parts/icon.tsx';
import { openFile } from '../parts/open-file.ts';
import { useOpening } from '../parts/use-opening.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp, useHistory, useServices } from '../parts/workroom-context.tsx';

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
      </div>
      <div className="top-choices">
        <UnitSwitch />
        <LanguageChoice />
        <ThemeSwitch />
      </div>
    </header>
  );
}

function ProjectName() {
  const name = useApp((state) => state.project?.name ?? '');
  const actions = useActions();
  const words = useWords().top;
  return (
    <label className="project-name">
      <span className="visually-hidden">{words.projectName}</span>
      <input
        value={name}
        maxLength={200}
        placeholder={words.untitled}
        spellCheck={false}
        onFocus={actions.beginEdit}
        onBlur={actions.endEdit}
        onChange={(event) => actions.renameProject(event.target.value)}
      />
    </label>
  );
}

function FileTools() {
  const gallery = useOpening();
  const earlier = useOpening();
  const input = useRef<HTMLInputElement>(null);
  const services = useServices();
  const actions = useActions();
  const allWords = useWords();
  const words = allWords.top;
  return (
    <>
      <div className="tool-group">
        <Tool icon="new" name={words.newBody} shortName={words.short.newBody} onClick={services.newBody} />
        <Tool
          icon="bodies"
          name={words.demoBodies}
          shortName={words.short.demoBodies}
          onClick={gallery.open}
        />
        <Tool icon="open" name={words.open} onClick={() => input.current?.click()} />
        <Tool icon="save" name={words.save} onClick={() => void services.saveProject()} />
        <Tool
          icon="earlier"
          name={words.earlier}
          shortName={words.short.earlier}
          isShort
          onClick={earlier.open}
        />
        <input
          ref={input}
          type="file"
          accept=".json,application/json,.zip,application/zip"
          hidden
          aria-label={words.openFile}
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            if (file) void openFile(file, services, actions, allWords);
          }}
        />
      </div>
      {earlier.isOpen && (
        <LateDialog key={earlier.number} of="wardrobe" title={words.earlier} onClose={earlier.close} />
      )}
      {gallery.isOpen && (
        <LateDialog key={gallery.number} of="demos" title={words.demoBodies} onClose={gallery.close} />
      )}
    </>
  );
}

interface ToolProps {
  readonly icon: IconName;
  readonly name: string;
  /** How the name begins; where the bar is narrow, no more of it is shown. */
  readonly shortName?: string;
  /** Nor where it is wide. */
  readonly isShort?: true;
  readonly onClick: () => void;
}

/** A tool with its word, beside or under the drawing as there is room. */
function Tool({ icon, name, shortName = name, isShort, onClick }: ToolProps) {
  return (
    <button type="button" className="tool" data-short={isShort} title={name} onClick={onClick}>
      <Icon name={icon} />
      <span>
        {shortName}
        <span className="rest-of-name">{name.slice(shortName.length)}</span>
      </span>
    </button>
  );
}

function HistoryTools() {
  const actions = useActions();
  const { undo, redo } = useHistory();
  const words = useWords().top;
  return (
    <div className="tool-group">
      <button
        type="button"
        aria-label={undo ? words.undoStep(undo) : words.undo}
        title={undo ? words.undoStep(undo) : words.nothingToUndo}
        disabled={undo === null}
        onClick={actions.undo}
      >
        <Icon name="undo" />
      </button>
      <button
        type="button"
        aria-label={redo ? words.redoStep(redo) : words.redo}
        title={redo ? words.redoStep(redo) : words.nothingToRedo}
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
  const words = useWords().top;
  const actions = useActions();
  return (
    <fieldset className="segments">
      <legend className="visually-hidden">{words.units}</legend>
      {(['cm', 'in'] as const).map((unit) => (
        <label key={unit}>
          <input
            type="radio"
            name="units"
            checked={units === unit}
            onChange={() => actions.setUnits(unit)}
            aria-label={unit === 'cm' ? words.centimetres : words.inches}
          />
          <span>{unit}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** Each language in its own words, for whoever does not read the present one. */
function LanguageChoice() {
  const language = useApp((state) => state.language);
  const services = useServices();
  const words = useWords().top;
  return (
    <select
      className="language-choice"
      aria-label={words.language}
      value={language}
      onChange={(event) => void services.speak(event.target.value as Language)}
    >
      {LANGUAGES.map((id) => (
        <option key={id} value={id} lang={id}>
          {LANGUAGE_NAMES[id]}
        </option>
      ))}
    </select>
  );
}

const NEXT_THEME: Readonly<Record<Theme, Theme>> = { system: 'light', light: 'dark', dark: 'system' };

function ThemeSwitch() {
  const theme = useApp((state) => state.theme);
  const words = useWords().top;
  const actions = useActions();
  return (
    <button
      type="button"
      className="icon-only"
      aria-label={words.changeLight(words.themes[theme], words.themes[NEXT_THEME[theme]])}
      title={words.light(words.themes[theme])}
      onClick={() => actions.setTheme(NEXT_THEME[theme])}
    >
      <Icon name={theme === 'system' ? 'lamp' : theme === 'light' ? 'sun' : 'moon'} />
    </button>
  );
}

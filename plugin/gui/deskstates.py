"""How the steps of a job stand: those of its file, its plan, and added tools."""

from __future__ import annotations

from pathlib import Path
from typing import Dict, List, Optional

from ..core.job.fingerprint import FileDigests
from ..core.job.job_file import JobRecord
from ..core.job.keeping import out_of_date
from ..processing.joblayers import GEOPACKAGE, layers_old
from .steps import OF_SURFACE, PLAN, STEPS, step_name
from .toolbook import State, ToolBook

_IN_STEPS = {name for step in STEPS if step.key != "report" for name in step.stages}


def states_of(record: Optional[JobRecord], folder: Path, book: ToolBook, failure: str) -> Dict[str, State]:
    """How each step of a job stands, in the order of the desk. ``failure``: of the job's last run, "" for none."""
    stale = set() if record is None else set(out_of_date(record, folder)) | layers_old(record, folder)
    made = set() if record is None else set(record.stages)
    found: Dict[str, State] = {}
    for step in STEPS:
        if step.key == "visits" and (record is None or not record.settings.visits):
            continue
        old = [name for name in stale if name in step.stages or (step.key == "report" and name not in _IN_STEPS)]
        state = State.STALE if old else State.DONE
        found[step.key] = state if made & set(step.stages) else State.EMPTY
    if failure:
        first = next((key for key, state in found.items() if state is not State.DONE), "report")
        found[first] = State.FAILED
    ready = record is not None and not stale & OF_SURFACE
    for key in book.tools:
        own = book.state(key)
        found[key] = own if ready or own is not State.DONE else State.STALE
    return {key: found[key] for key in _order(found)}


def stamp_of(record: Optional[JobRecord], folder: Path, path: str) -> str:
    """Tells the content of a file; of the job's own layers, which QGIS touches when it opens them, their origin."""
    if Path(path) == folder / GEOPACKAGE and record is not None:
        names = ("check", "decisions", "lines", "surface")
        return " ".join(record.stages[name].gives for name in names if name in record.stages)
    return FileDigests(quick=True).of(path)


def _order(found: Dict[str, State]) -> List[str]:
    """The steps in the order of the work: the plan before the report, added tools last."""
    before = [step.key for step in STEPS if step.key != "report" and step.key in found]
    return [*before, PLAN, "report", *(key for key in found if not step_name(key))]

"""Between the form of the desk and the choices of a job."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any, Dict, Mapping, Optional, Tuple

from qgis.core import QgsCoordinateReferenceSystem

from ..core.contours.lines import ContourOptions
from ..core.contours.sheet import SheetOptions
from ..core.job.job_file import JobRecord
from ..core.job.settings import JobSettings
from ..core.messages import SurveyError
from ..core.units import WORKING_UNITS, LengthUnit, site_units, usual_contour_interval
from ..processing.jobchoices import SMOOTH
from ..processing.jobparameters import usual_settings
from ..processing.jobvisits import files_chosen, files_shown
from ..processing.parameters import core_crs
from .steps import DEFAULTS, FROM_JOB, unit_number

#: What the form says that is kept with the project: where the job is, and its plan.
DECISIONS_OF_DESK = ("folder", "scale", "paper", "parcels")


def suiting_interval(crs: str) -> Tuple[float, int]:
    """The contour interval that suits the heights of a CRS, and the number of its unit; for metres where it is none."""
    named = QgsCoordinateReferenceSystem(crs)
    try:
        unit = site_units(core_crs(named, crs) if named.isValid() else None).height
    except SurveyError:
        unit = LengthUnit.METRE
    return usual_contour_interval(unit), unit_number(unit)


def form_of(record: Optional[JobRecord]) -> Dict[str, Any]:
    """What the form shows of a job; of none what stands there at first."""
    if record is None:
        return {"files": [], "visits": [], "crs": "", **FROM_JOB, **DEFAULTS}
    told = record.settings
    files = [] if not str(told.survey) else [str(path) for path in (told.survey, *told.more)]
    return {
        **DEFAULTS,
        "files": files,
        "visits": files_shown(told),
        "crs": told.crs or "",
        "interval": told.contours.interval,
        "unit": unit_number(told.contours.unit),
        "checks_file": str(told.check_points or ""),
    }


def settings_of(form: Mapping[str, Any], record: Optional[JobRecord], folder: Path) -> JobSettings:
    """The choices of a job as the form says, all others as they were."""
    files = [Path(path) for path in form["files"]]
    unit = WORKING_UNITS[form["unit"]]
    if record is None:
        told = usual_settings(files[0], folder, ContourOptions(form["interval"], unit=unit))
    else:
        told = record.settings
    told = files_chosen(replace(told, survey=files[0], more=tuple(files[1:])), form["visits"])
    sheet = told.sheet or SheetOptions(SMOOTH, None)
    return replace(
        told,
        out=folder,
        crs=form["crs"],
        contours=replace(told.contours, interval=form["interval"], unit=unit),
        sheet=replace(sheet, scale=float(form["scale"])),
        check_points=Path(form["checks_file"]) if form["checks_file"] else None,
    )

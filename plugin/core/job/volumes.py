"""Volumes between the surveyed surface and another surface or a level, as part of the main job."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, Callable, Optional, Sequence, Tuple

from ..alignment.line_file import read_line
from ..earthwork.comparison import Comparison
from ..earthwork.plane import Plane
from ..earthwork.region_file import RegionFile, read_region_file
from ..earthwork.study import Certainty, Study, StudyOptions, study
from ..handover.mesh_noise import OWN_NOISE, noise_file, read_mesh_noise
from ..handover.projection import read_prj
from ..handover.recent_meshes import recent_2dm
from ..handover.volumes import write_depths, write_volumes, write_zero_lines
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..progress import Progress, part
from ..report import markup
from ..report.labels import Words
from ..report.markup import Section
from ..report.results import JobResult
from ..report.volume_sections import CAUTIONS, volume_body
from ..surface.tin import Tin
from ..units import LengthUnit
from .noise import survey_certainty

VOLUME_LINE = Text(
    "job.volume_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Volume    {existing} to {design}: cut {cut:.1f} ± {cut_95:.1f} m³, fill {fill:.1f} ± {fill_95:.1f} m³, net "
        "{net:.1f} ± {net_95:.1f} m³ (95 %)",
    ),
)
MEASURED_LINE = Text(
    "job.volume_measured",
    QT_TRANSLATE_NOOP(
        "core", "          triangles as they are: cut {cut:.1f} m³, fill {fill:.1f} m³, net {net:.1f} m³"
    ),
)
SAME_NOISE = Text(
    "job.same_noise",
    QT_TRANSLATE_NOOP(
        "core",
        "{name} is a mesh, which does not hold how its heights were measured: it is taken to be as good as this "
        "survey, with {sigma:.0f} mm new at every point and {drift:.0f} mm of drift. Give --other-sigma and "
        "--other-drift if you know them.",
    ),
)
VOLUMES = QT_TRANSLATE_NOOP("core", "Volumes: {existing} to {design}")
#: What the files of a volume are called, and what is asked.
AGAINST, SINCE, TO_LEVEL = "against", "since", "level"


@dataclass(frozen=True)
class VolumeQuestion:
    """Compare the survey's surface with a mesh ``against`` (a design), one ``since`` (an earlier survey), or a level.

    One of the three; ``level`` in metres. ``regions``: GeoJSON of polygons that are told apart. ``line``: GeoJSON of a
    line along which other methods take sections, every ``step`` metres, ``half_width`` to each side. ``limits``: depth
    classes, metres. ``other_sigma``, ``other_drift``: noise of the other surface's points, new at every point and
    shared within minutes, metres; None: of an earlier survey what is kept beside its mesh, or that of this one, 0 of a
    design. ``offset``: how much
    higher the later survey is known to be where nothing changed, metres; None finds it. ``offset_sigma``: its standard
    deviation, where it is given or cannot be found. ``unit``: in which a level is told.
    """

    against: Optional[Path] = None
    since: Optional[Path] = None
    level: Optional[float] = None
    regions: Optional[Path] = None
    line: Optional[Path] = None
    step: float = 10.0
    half_width: float = 20.0
    limits: Optional[Tuple[float, ...]] = None
    offset_sigma: float = 0.01
    offset: Optional[float] = None
    other_sigma: Optional[float] = None
    other_drift: Optional[float] = None
    unit: LengthUnit = LengthUnit.METRE

    @property
    def stage(self) -> str:
        return "volumes"

    def answer(self, result: JobResult, progress: Progress) -> VolumeAnswer:
        """The volumes. Raises SurveyError."""
        given = RegionFile((), ())
        if self.regions is not None:
            given = read_region_file(self.regions, result.crs, result.accept)
        line = None if self.line is None else read_line(self.line, result.crs)[0]
        survey = survey_certainty(result)
        other, said = self._other(survey)
        earlier = self.since is not None
        options = StudyOptions(
            existing=other if earlier else survey,
            design=survey if earlier else other,
            offset_sigma=self.offset_sigma,
            offset=self.offset,
            limits=self.limits,
            line=line,
            step=self.step,
            half_width=self.half_width,
        )
        comparison = self._comparison(result, part(progress, 0.0, 0.5))
        return VolumeAnswer(study(comparison, options, given.regions, progress), self._name, (*given.messages, *said))

    def _other(self, survey: Certainty) -> Tuple[Certainty, Tuple[Message, ...]]:
        """How sure the other surface is, and what is to be said of that."""
        if self.since is not None and self.other_sigma is None and self.other_drift is None:
            noise, said = read_mesh_noise(self.since)
            other = replace(survey, time=None)
            if noise is not None:
                other = replace(other, sigma=noise.sigma, drift=noise.drift, time=noise.time)
            mm = {"sigma": 1000 * other.sigma, "drift": 1000 * other.drift, "file": noise_file(self.since).name}
            text = SAME_NOISE if noise is None else OWN_NOISE
            return other, (*said, message(text, name=self.since.name, **mm))
        other = Certainty(self.other_sigma or 0.0, self.other_drift or 0.0)
        return replace(other, ground=other.is_survey), ()

    @property
    def _name(self) -> str:
        """The beginning of the names of its files, by what is compared."""
        if self.level is not None:
            return TO_LEVEL
        return AGAINST if self.since is None else SINCE

    def _comparison(self, result: JobResult, progress: Progress) -> Comparison:
        tin, name = result.surface.tin, Path(result.survey.points.source).name
        if self.level is not None:
            level = f"{self.level / self.unit.metres:g} {self.unit.symbol}"
            return Comparison(tin, Plane(self.level), names=(name, level), progress=progress)
        if self.since is not None:
            earlier = _mesh(self.since, tin)
            return Comparison(earlier, tin, names=(self.since.name, name), progress=progress)
        assert self.against is not None
        return Comparison(tin, _mesh(self.against, tin), names=(name, self.against.name), progress=progress)


def _mesh(path: Path, tin: Tin) -> Tin:
    """A mesh in the CRS its ``.prj`` names, or in that of the survey where there is none."""
    crs: Optional[Any] = read_prj(path)
    return recent_2dm(path, tin.crs if crs is None else crs)


@dataclass(frozen=True)
class VolumeAnswer:
    """What came of a comparison; ``name``: of its files. ``of_file``: what is to be told of the file of regions."""

    study: Study
    name: str
    of_file: Tuple[Message, ...] = ()

    @property
    def messages(self) -> Tuple[Message, ...]:
        return (*self.of_file, *self.study.messages)

    @property
    def lines(self) -> Tuple[Message, ...]:
        found, doubt = self.study, self.study.doubt
        raw = found.measured
        measured = (message(MEASURED_LINE, cut=raw.cut, fill=raw.fill, net=raw.net),) if found.two_surveys else ()
        return (
            message(
                VOLUME_LINE, existing=found.existing_name, design=found.design_name, cut=doubt.cut.value,
                cut_95=doubt.cut.half_95, fill=doubt.fill.value, fill_95=doubt.fill.half_95, net=doubt.net.value,
                net_95=doubt.net.half_95,
            ),
            *measured,
        )  # fmt: skip

    def sections(self, words: Words) -> Sequence[Section]:
        title = words(VOLUMES, existing=self.study.existing_name, design=self.study.design_name)
        cautions = markup.caution([words(text) for text in CAUTIONS])
        return ((f"volumes-{self.name}", title, cautions + volume_body(self.study, words)),)

    def write(self, folder: Path, translate: Callable[[str], str]) -> Sequence[Path]:
        """``volumes_*.csv``, ``depths_*.geojson`` and ``zero_line_*.geojson``."""
        table, depths, lines = (
            folder / f"{what}_{self.name}.{kind}"
            for what, kind in (("volumes", "csv"), ("depths", "geojson"), ("zero_line", "geojson"))
        )
        write_volumes(self.study, table)
        write_depths(self.study, depths)
        write_zero_lines(self.study, lines)
        return [table, depths, lines]

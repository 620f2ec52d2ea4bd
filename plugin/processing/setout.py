"""Points to set out, with design heights, cut and fill, and a table for the data collector."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any, Dict, List, Optional

import numpy as np
from qgis.core import (
    QgsGeometry,
    QgsPoint,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFileDestination,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.line import make_alignment
from ..core.georeference.control import ControlPoints
from ..core.georeference.crs import plan_unit
from ..core.handover.setout import (
    SetOut,
    along,
    corners,
    grid_places,
    make_setout,
    numbered,
    offset_names,
    offset_places,
    with_design,
    with_ground,
)
from ..core.handover.setout_table import (
    TableForm,
    check_control,
    parse_columns,
    write_notes,
    write_setout,
)
from ..core.progress import Progress, part
from ..core.surface.tin import Tin
from ..core.units import LengthUnit
from .algorithm import progress_of, report
from .exchangeinput import HandoverAlgorithm
from .localnumbers import shown
from .parameters import chosen_source, chosen_unit, optional_source, qgis_crs
from .pointlayer import PointColumns, read_points_layer
from .roadlayers import plain
from .setoutlayer import Given, GivenColumns, read_given, setout_fields, setout_rows
from .setoutoptions import GRID, OFFSETS, add_design, add_doubt, add_places, add_table
from .sinks import add_feature, counted
from .styles import SETOUT, dress_vector
from .surfaceinput import same_crs
from .surfacenoise import surface_noise
from .versions import POINT_SOURCE, POINT_Z, POLYGON_GEOMETRY

translate = QCoreApplication.translate

DELIMITERS = (",", ";", "\t", " ")


class SetOutPoints(HandoverAlgorithm):
    """``hummock:setout``"""

    NAME = "setout"
    ICON = "setout.svg"

    def title(self) -> str:
        return translate("hummock", "Points to set out")

    def summary(self) -> str:
        return translate("hummock", "Set-out points with design height, cut and fill, and a table for data collectors.")

    def words(self) -> str:
        return translate(
            "hummock", "set-out,stake out,staking,layout,grid,offsets,cut,fill,design,data collector,csv,control"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Makes points to set out from a layer: its points, the corners of its lines and polygons, a grid over "
            "its polygons, or offsets along its lines. Each gets a design height, the height of the existing ground, "
            "and cut or fill: the design less the ground, above 0 fill, below 0 cut.</p>"
            "<p><b>It assumes</b> a 2DM mesh of the existing ground as “Build the surface” writes it, places in its "
            "CRS, and a design that whoever answers for it has released.</p>"
            "<p><b>Design heights</b> come from a field, or else from the Z of the layer where that is ticked, or else "
            "from a design surface.</p>"
            "<p><b>Doubt:</b> the standard deviation of cut and fill has two parts: the noise of the surveyed heights, "
            "carried through the triangle, and the doubt of set-out in plan times the slope of the ground. The design "
            "counts as exact, and ground between the survey's points may differ by more.</p>"
            "<p><b>The table</b> has the columns you name, in that order, in the unit you choose; the control points "
            "stand at its end with the code CONTROL. Names are unique, capitals or not: clashes are refused. Notes "
            "and cautions stand at its head and in a text beside it.</p>"
            "<p><b>What can go wrong:</b> grid coordinates used as distances on the ground: check the combined factor. "
            "A data collector in another foot, another datum or another height system. An outdated design.</p>"
            "<p><b>Caution:</b> check on control before, during and after the work. Have buried services located "
            "before anything is dug or driven in. This is no survey of boundaries: property marks, and set-out that "
            "others build on, are for a licensed professional under local rules. For machine guidance check at known "
            "points, away from the machine's path.</p>",
        )

    # Parameters

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        add_places(self)
        self.add_surface(label=translate("hummock", "Existing surface (2DM mesh)"))
        add_design(self)
        add_doubt(self)
        add_table(self)
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Points to set out"), POINT_SOURCE),
            translate("hummock", "At their design heights, coloured by cut and fill."),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                "TABLE", translate("hummock", "Table for the data collector"),
                translate("hummock", "Text files (*.csv *.txt)"), optional=True, createByDefault=False,
            ),
            translate("hummock", "Text in UTF-8; its notes stand in a second file, NAME_notes.txt."),
        )  # fmt: skip
        self.add_numbers(
            ("POINTS", translate("hummock", "Points to set out")),
            ("CONTROL_POINTS", translate("hummock", "Control points")),
            ("HIGHEST_FILL", translate("hummock", "Highest fill (m)")),
            ("DEEPEST_CUT", translate("hummock", "Deepest cut (m)")),
            ("WITHOUT_HEIGHT", translate("hummock", "Points without design height")),
        )

    # Work

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        ground = self.read_surface(parameters, context)
        form = self._form(ground, parameters, context)
        progress(0.3, "surface")
        setout = self._points(ground, form.unit, parameters, context, part(progress, 0.3, 0.5))
        if self.parameterAsString(parameters, "DESIGN", context):
            setout = with_design(setout, self.read_surface(parameters, context, "DESIGN"))
        sigma = surface_noise(self, ground, parameters, context, feedback).total
        setout = with_ground(setout, ground, sigma, self.parameterAsDouble(parameters, "PLAN_SIGMA", context))
        control = self._control(ground, parameters, context, feedback, part(progress, 0.6, 0.7))
        if control is not None:
            check_control(setout, control)
        report(setout.messages, feedback)
        results = {"OUTPUT": self._write_layer(setout, control, parameters, context, part(progress, 0.7, 0.9))}
        results.update(self._write_table(setout, control, form, parameters, context))
        progress(1.0, "layers")
        return {**results, **self._numbers(setout, control, feedback)}

    def _form(self, ground: Tin, parameters: Dict[str, Any], context: QgsProcessingContext) -> TableForm:
        return TableForm(
            parse_columns(self.parameterAsString(parameters, "COLUMNS", context)),
            chosen_unit(self, parameters, "UNIT", context) or plan_unit(ground.crs),
            self.parameterAsInt(parameters, "DECIMALS", context),
            DELIMITERS[self.parameterAsEnum(parameters, "DELIMITER", context)],
            self.parameterAsBool(parameters, "HEADER", context),
            self.parameterAsBool(parameters, "COMMENTS", context),
        )

    def _points(
        self,
        ground: Tin,
        unit: LengthUnit,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> SetOut:
        source = chosen_source(self, parameters, "PLACES", context)
        label = source.sourceName() or "PLACES"
        same_crs(source, ground, label)
        given = read_given(source, ground.crs, self._columns(parameters, context), progress)
        way = self.parameterAsEnum(parameters, "WAY", context)
        prefix = self.parameterAsString(parameters, "PREFIX", context).strip()
        first = self.parameterAsInt(parameters, "FIRST", context)
        step = self.parameterAsDouble(parameters, "SPACING", context)
        if way == OFFSETS:
            return self._offsets(given, ground, unit, step, prefix, label, parameters, context)
        if way == GRID:
            if QgsWkbTypes.geometryType(source.wkbType()) != POLYGON_GEOMETRY:
                raise QgsProcessingException(
                    translate("hummock", "{layer}: a grid is laid over polygons; choose a layer of them.").format(
                        layer=label
                    )
                )
            bearing = self.parameterAsDouble(parameters, "BEARING", context)
            xy = grid_places(given.parts, step * unit.metres, bearing)
            return make_setout(xy, numbered(prefix, len(xy), first), crs=ground.crs)
        places, names, codes = given.places, given.names, given.codes
        if given.parts:
            places = corners(given.parts)
            names, codes = [], [""] * len(places)
        heights = places[:, 2]
        return make_setout(places[:, :2], names or numbered(prefix, len(places), first), heights, codes, ground.crs)

    def _offsets(
        self,
        given: Given,
        ground: Tin,
        unit: LengthUnit,
        step: float,
        prefix: str,
        label: str,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
    ) -> SetOut:
        """Offsets along each line; several lines are numbered within their names."""
        offsets = [value * unit.metres for value in self._offset_values(parameters, context)]
        start = self.parameterAsDouble(parameters, "START", context)
        vertices = self.parameterAsBool(parameters, "VERTICES", context)
        if not given.parts:
            said = translate("hummock", "{layer}: offsets are laid along lines; choose a layer of them.")
            raise QgsProcessingException(said.format(layer=label))
        names: List[str] = []
        found, lines = [], []
        for i, xyz in enumerate(given.parts, 1):
            line = make_alignment(xyz[:, :2], label, start, (), unit)
            rows = offset_places(line, step, offsets, vertices)
            own = prefix if len(given.parts) == 1 else f"{prefix}{i}-"
            names += offset_names(line, rows, own)
            found.append(rows)
            lines.append(line)
        setout = make_setout(np.concatenate([rows.xy for rows in found]), names, crs=ground.crs)
        station = np.concatenate([line.numbering.stations(rows.distance) for line, rows in zip(lines, found)])
        return along(setout, station, np.concatenate([rows.offset for rows in found]))

    def _columns(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> GivenColumns:
        fields = ("NAME_FIELD", "CODE_FIELD", "HEIGHT_FIELD")
        name, code, height = (self.parameterAsString(parameters, field, context) for field in fields)
        return GivenColumns(name, code, height, self.parameterAsBool(parameters, "USE_Z", context))

    def _offset_values(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> List[float]:
        text = self.parameterAsString(parameters, "OFFSETS", context)
        words = [word for word in re.split(r"[,;\s]+", text.strip()) if word]
        try:
            values = [float(word) for word in words]
        except ValueError:
            values = []
        if not values or not all(np.isfinite(values)):
            raise QgsProcessingException(
                translate("hummock", "Offsets: “{text}” is no list of numbers, such as -3.5, 0, 3.5.").format(text=text)
            )
        return sorted(set(values))

    def _control(
        self,
        ground: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Optional[ControlPoints]:
        source = optional_source(self, parameters, "CONTROL", context)
        if source is None:
            return None
        label = source.sourceName() or "CONTROL"
        same_crs(source, ground, label)
        points = read_points_layer(source, PointColumns(), label, feedback, progress, keep_without_height=True)
        return ControlPoints(points.name, points.easting, points.northing, points.height, points.source_line, label)

    # Outputs

    def _write_layer(
        self,
        setout: SetOut,
        control: Optional[ControlPoints],
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> str:
        crs = qgis_crs(setout.crs)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, plain(setout_fields()), POINT_Z, crs)
        for xyz, attributes in counted(setout_rows(setout, control), len(setout), progress):
            add_feature(sink, QgsGeometry(QgsPoint(*xyz)), attributes)
        dress_vector(context, place, SETOUT, fields=setout_fields())
        return place

    def _write_table(
        self,
        setout: SetOut,
        control: Optional[ControlPoints],
        form: TableForm,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
    ) -> Dict[str, Any]:
        path = self.parameterAsFileOutput(parameters, "TABLE", context)
        if not path:
            return {}

        def say(english: str) -> str:
            return str(translate("core", english))

        write_setout(setout, path, form, control, say)
        write_notes(setout, Path(path).with_name(f"{Path(path).stem}_notes.txt"), form, control, say)
        return {"TABLE": path}

    def _numbers(
        self, setout: SetOut, control: Optional[ControlPoints], feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        known = setout.cut_fill[np.isfinite(setout.cut_fill)]
        fill, cut = (max(0.0, float(side.max())) if len(side) else 0.0 for side in (known, -known))
        results = {
            "POINTS": len(setout),
            "CONTROL_POINTS": 0 if control is None else len(control),
            "HIGHEST_FILL": fill,
            "DEEPEST_CUT": cut,
            "WITHOUT_HEIGHT": int(np.count_nonzero(~np.isfinite(setout.design))),
        }
        said = translate(
            "hummock", "Points: {points}, control points: {control}. Fill up to {fill:.3f} m, cut up to {cut:.3f} m."
        )
        feedback.pushInfo(shown(said, points=len(setout), control=results["CONTROL_POINTS"], fill=fill, cut=cut))
        return results

"""The provider: Hummock's algorithms in QGIS's toolbox, models, Python and qgis_process."""

from __future__ import annotations

from pathlib import Path
from typing import List

from qgis.core import QgsProcessingProvider
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtGui import QIcon

from .accuracystatement import StateAccuracy
from .algorithm import HummockAlgorithm
from .balanceheight import BalanceHeight
from .basinstorage import BasinStorage
from .buildsurface import BuildSurface
from .catchments import FindCatchments
from .checkline import CheckLine
from .checksurvey import CheckSurvey
from .contours import DrawContours
from .contoursheet import ContourSheet
from .correctbase import CorrectBase
from .coverage import CheckCoverage
from .crosssections import CrossSections
from .drapelines import DrapeLines
from .exportlandxml import ExportLandXml
from .findlines import FindLines
from .fitcontrol import FitControl
from .flatareas import FindFlatAreas
from .flowarrows import DrawArrows
from .flowpaths import TracePaths
from .groundgrid import GroundAndGrid
from .handoverfiles import HandOverFiles
from .importpoints import ImportPoints
from .inspectsurface import InspectSurface
from .padgrading import GradePads
from .peakflow import EstimatePeakFlow
from .plansheet import PlanSheet
from .ponds import FindPonds
from .readlandxml import ReadLandXml
from .roadgrades import RoadGrades
from .roadprofile import RoadProfile
from .setout import SetOutPoints
from .slopemap import MapSlopes
from .stockpile import StockpileVolume
from .stripgrading import GradeStrip
from .surfaceatpoints import SurfaceAtPoints
from .surfaceraster import SurfaceRaster
from .surveyreport import SurveyReport
from .thinsurface import ThinSurface
from .verticalcurves import FitVerticalCurves
from .volume import VolumeBetween
from .volumebyregion import VolumeByRegion
from .volumetoplane import VolumeToPlane
from .walkingplan import PlanWalk
from .waterchange import CompareWater

#: In the order of the work.
ALGORITHMS = (
    PlanWalk,
    ImportPoints,
    FitControl,
    CorrectBase,
    GroundAndGrid,
    CheckSurvey,
    FindLines,
    BuildSurface,
    InspectSurface,
    CheckCoverage,
    StateAccuracy,
    SurfaceAtPoints,
    DrapeLines,
    SurfaceRaster,
    MapSlopes,
    ThinSurface,
    DrawContours,
    ContourSheet,
    TracePaths,
    DrawArrows,
    FindPonds,
    FindCatchments,
    FindFlatAreas,
    EstimatePeakFlow,
    CompareWater,
    RoadProfile,
    CrossSections,
    RoadGrades,
    FitVerticalCurves,
    CheckLine,
    VolumeBetween,
    VolumeToPlane,
    VolumeByRegion,
    StockpileVolume,
    BasinStorage,
    GradePads,
    GradeStrip,
    BalanceHeight,
    PlanSheet,
    SurveyReport,
    HandOverFiles,
    ExportLandXml,
    ReadLandXml,
    SetOutPoints,
)

translate = QCoreApplication.translate


class HummockProvider(QgsProcessingProvider):
    """Provider ``hummock``."""

    def id(self) -> str:
        return "hummock"

    def name(self) -> str:
        return translate("hummock", "Hummock")

    def longName(self) -> str:
        return translate("hummock", "Hummock: from rover points to surface and contours")

    def icon(self) -> QIcon:
        return QIcon(self.svgIconPath())

    def svgIconPath(self) -> str:
        return str(Path(__file__).resolve().parent.parent / "icon.svg")

    def loadAlgorithms(self) -> None:
        for algorithm in ALGORITHMS:
            self.addAlgorithm(algorithm())

    def in_order(self) -> List[HummockAlgorithm]:
        """The registered algorithms in the order of the work, for menus."""
        return [self.algorithm(kind.NAME) for kind in ALGORITHMS]

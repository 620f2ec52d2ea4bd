"""QGIS's 3D view of a surface as a picture, in a process of its own: .ci/view3d.py MESH PICTURE

QGIS's Python knows no mesh in 3D before 3.26, so the settings come as XML.
"""

import os
import sys
from pathlib import Path

from qgis._3d import Qgs3DMapSettings, QgsCameraPose, QgsLayoutItem3DMap
from qgis.core import (
    QgsApplication,
    QgsCoordinateReferenceSystem,
    QgsLayoutExporter,
    QgsLayoutSize,
    QgsMeshLayer,
    QgsPrintLayout,
    QgsProject,
    QgsReadWriteContext,
    QgsVector3D,
)
from qgis.PyQt.QtCore import QRectF
from qgis.PyQt.QtXml import QDomDocument

TIMES = 3  # heights, for streets and fields
SIZE = (260, 150)  # mm

SETTINGS = """<qgis3d>
 <origin x="{east}" y="{north}" z="0"/>
 <camera field-of-view="45" projection-type="1" camera-navigation-mode="0" camera-movement-speed="5"/>
 <color background="255,255,255" selection="255,255,0"/>
 <terrain exaggeration="{times}" texture-size="512" max-terrain-error="3" max-ground-error="1" shading-enabled="0"
   elevation-offset="0" show-labels="0" map-theme="" terrain-rendering-enabled="1">
  <layers/>
  <generator type="mesh" layer="{layer}">
   <symbol type="mesh" enabled="1">
    <data alt-clamping="relative" height="0" add-back-faces="1"/>
    <advanced-settings smoothed-triangle="0" wireframe-enabled="0" wireframe-line-width="1"
      wireframe-line-color="128,128,128,255" level-of-detail="-99" texture-type="1" use-texture-single-color="0"
      texture-single-color="0,128,0,255" vertical-group-index="0" vertical-relative="0" vertical-scale="{times}"
      arrows-enabled="0" arrows-spacing="25" max-texture-size="2048">
     <colorrampshader colorRampType="INTERPOLATED" classificationMode="2" clip="0" minimumValue="{low}"
       maximumValue="{high}" labelPrecision="3">{colours}</colorrampshader>
    </advanced-settings>
   </symbol>
  </generator>
 </terrain>
 <point-lights>
  <point-light x="-300" y="900" z="-300" intensity="0.75" color="#ffffff" attenuation-0="1" attenuation-1="0"
    attenuation-2="0"/>
 </point-lights>
</qgis3d>"""


def view_3d_picture(path, mesh):
    """The mesh layer in QGIS's 3D view, seen from the south, heights ``TIMES`` times."""
    project, middle = QgsProject.instance(), mesh.extent().center()
    shader = mesh.rendererSettings().scalarSettings(0).colorRampShader()
    low, high = shader.minimumValue(), shader.maximumValue()
    colours = "".join(
        f'<item value="{item.value}" color="{item.color.name()}" alpha="255" label=""/>'
        for item in shader.colorRampItemList()
    )
    document = QDomDocument()
    document.setContent(
        SETTINGS.format(
            east=middle.x(), north=middle.y(), times=TIMES, layer=mesh.id(), low=low, high=high, colours=colours
        )
    )
    settings = Qgs3DMapSettings()
    settings.readXml(document.documentElement(), QgsReadWriteContext())
    settings.resolveReferences(project)
    settings.setCrs(mesh.crs())
    settings.setLayers([mesh])
    settings.setTransformContext(project.transformContext())
    layout = QgsPrintLayout(project)
    layout.initializeDefaults()
    layout.pageCollection().page(0).setPageSize(QgsLayoutSize(*SIZE))
    view = QgsLayoutItem3DMap(layout)
    layout.addLayoutItem(view)
    view.attemptSetSceneRect(QRectF(0, 0, *SIZE))
    view.setMapSettings(settings)
    pose = QgsCameraPose()
    pose.setCenterPoint(QgsVector3D(4, TIMES * (low + high) / 2, 0))
    pose.setDistanceFromCenterPoint(1.05 * mesh.extent().width())
    pose.setPitchAngle(52)
    pose.setHeadingAngle(12)
    view.setCameraPose(pose)
    image = QgsLayoutExporter.ImageExportSettings()
    image.dpi = 110
    image.generateWorldFile = False
    QgsLayoutExporter(layout).exportToImage(str(path), image)


def main():
    application = QgsApplication([], True)
    application.initQgis()
    sys.dont_write_bytecode = True
    sys.path.insert(0, str(Path(__file__).resolve().parent.parent))
    from plugin.processing.styles import colour_heights

    mesh = QgsMeshLayer(sys.argv[1], "surface", "mdal")
    mesh.setCrs(QgsCoordinateReferenceSystem.fromWkt(Path(sys.argv[1]).with_suffix(".prj").read_text()))
    colour_heights(mesh)
    QgsProject.instance().addMapLayer(mesh)
    QgsProject.instance().setCrs(mesh.crs())
    view_3d_picture(sys.argv[2], mesh)
    os._exit(0)  # the 3D engine does not always survive its end


if __name__ == "__main__":
    main()

# Reads STEP files by gmsh (Open CASCADE). A line a file: number of solids, their volume, flat faces, cylinders, other
# faces, the box, and all names, as JSON.
import json
import sys

import gmsh

gmsh.initialize()
gmsh.option.setNumber("General.Terminal", 0)
gmsh.option.setNumber("Geometry.OCCImportLabels", 1)
gmsh.option.setString("Geometry.OCCTargetUnit", "MM")
for path in sys.argv[1:]:
    gmsh.clear()
    gmsh.model.add("read")
    gmsh.model.occ.importShapes(path, highestDimOnly=False)
    gmsh.model.occ.synchronize()
    solids = gmsh.model.getEntities(3)
    types = [gmsh.model.getType(2, tag) for _, tag in gmsh.model.getEntities(2)]
    boxes = [gmsh.model.occ.getBoundingBox(3, tag) for _, tag in solids]
    print(json.dumps({
        "solids": len(solids),
        "volume": repr(sum(gmsh.model.occ.getMass(3, tag) for _, tag in solids)),
        "flat": types.count("Plane"),
        "round": types.count("Cylinder"),
        "other": len(types) - types.count("Plane") - types.count("Cylinder"),
        "box": [min(b[k] for b in boxes) for k in range(3)] + [max(b[k] for b in boxes) for k in range(3, 6)],
        "names": sorted({gmsh.model.getEntityName(3, tag) for _, tag in solids}),
    }))
gmsh.finalize()

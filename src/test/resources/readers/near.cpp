// Distances of pairs of meshes by the Flexible Collision Library. Reads, until the end: two meshes (number of corners
// and of triangles, the corners, the triangles) and where the second one's frame is in that of the first (three rows of
// four); writes the distance, not above 0 where the surfaces meet.
#include <fcl/geometry/bvh/BVH_model.h>
#include <fcl/narrowphase/collision.h>
#include <fcl/narrowphase/distance.h>

#include <cstdio>
#include <memory>
#include <vector>

typedef fcl::BVHModel<fcl::OBBRSS<double>> Model;

static std::shared_ptr<Model> read() {
  int corners, triangles;
  if (scanf("%d %d", &corners, &triangles) != 2) return nullptr;
  std::vector<fcl::Vector3<double>> points(corners);
  for (auto& p : points) {
    if (scanf("%lf %lf %lf", &p[0], &p[1], &p[2]) != 3) return nullptr;
  }
  std::vector<fcl::Triangle> faces;
  for (int i = 0; i < triangles; i++) {
    int a, b, c;
    if (scanf("%d %d %d", &a, &b, &c) != 3) return nullptr;
    faces.emplace_back(a, b, c);
  }
  auto model = std::make_shared<Model>();
  model->beginModel();
  model->addSubModel(points, faces);
  model->endModel();
  return model;
}

int main() {
  while (auto one = read()) {
    auto other = read();
    auto home = fcl::Transform3<double>::Identity();
    fcl::Transform3<double> pose = home;
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 4; column++) {
        if (scanf("%lf", &pose.matrix()(row, column)) != 1) return 1;
      }
    }
    fcl::CollisionRequest<double> meets;
    fcl::CollisionResult<double> met;
    fcl::collide<double>(one.get(), home, other.get(), pose, meets, met);
    fcl::DistanceRequest<double> ask;
    fcl::DistanceResult<double> found;
    fcl::distance<double>(one.get(), home, other.get(), pose, ask, found);
    printf("%.17g\n", met.isCollision() ? 0 : found.min_distance);
  }
}

# Screens, frames and what goes through them.
[condition][described.ScreenUsed]there is a screen=ScreenUsed()
[condition][described.ScreenUsed]- with a mesh finer than {number} per cm=mesh.perCm > {number}
[condition][described.ScreenUsed]- with a mesh coarser than {number} per cm=mesh.perCm < {number}
[condition][described.ScreenUsed]- with a frame longer than {length}=frameLength.base() > {length}
[condition][described.ScreenUsed]- with a frame wider than {length}=frameWidth.base() > {length}
[condition][described.ScreenUsed]- without a squeegee stated=squeegeeStated == false
[condition][described.ScreenUsed]- called {screen}=screen == {screen}
[condition][described.ScreenUsed]- that prints the design {design}=designs contains {design}
[condition][described.ScreenUsed]- with a frame longer than the table is wide=frameLength > described.PlaceOfWork.tableWidth
[condition][described.ScreenUsed]- with a frame longer than the cloth is wide=frameLength > described.ClothPrinted.width
[greatest][described.ScreenUsed]the screen with the finest mesh=mesh
[least][described.ScreenUsed]the screen with the coarsest mesh=mesh
[greatest][described.ScreenUsed]the screen with the longest frame=frameLength
[condition][screens.MeshRead]a mesh is counted=MeshRead()
[condition][screens.MeshRead]- below {number} per inch=perInch < {number}
[condition][screens.MeshRead]- above {number} per inch=perInch > {number}
[condition][screens.PullsRead]a colour is pulled=PullsRead()
[condition][screens.PullsRead]- more than {number} times=pulls > {number}
[condition][screens.ThreadLeftOut]a mesh is given without its thread=ThreadLeftOut()
[condition][screens.MeshWeave]a mesh has a thread=MeshWeave()
[condition][screens.MeshWeave]- thicker than {number} µm=threadMicrometres() > {number}
[condition][screens.MeshForPaste]a paste goes through a mesh=MeshForPaste()
[condition][screens.MeshForPaste]- finer than {number} per cm=count.perCm > {number}
[condition][screens.MeshForPaste]- coarser than {number} per cm=count.perCm < {number}
[condition][screens.MeshForPaste]- for paint=medium.text == "paint"
[condition][screens.SqueegeeFit]a squeegee goes with a screen=SqueegeeFit()
[condition][screens.SqueegeeFit]- covering its image by less than {length}=overlap.base() < {length}
[condition][screens.SeparationOnScreen]a colour lies on a screen=SeparationOnScreen()
[condition][screens.SeparationOnScreen]- longer than {length}=length.base() > {length}
[condition][screens.DetailOnMesh]a fine detail is printed=DetailOnMesh()
[condition][screens.DetailOnMesh]- finer than {length}=detail.base() < {length}
[condition][screens.DetailOnMesh]- of fewer than {number} openings=openings < {number}
[condition][screens.FrameMargin]a frame leaves a margin around its image=FrameMargin()
[condition][screens.FrameMargin]- of less than {length}=least.base() < {length}
[condition][screens.StencilImages]one screen holds several images=StencilImages(images > 1)
[condition][screens.StencilImages]- more than {number} of them=images > {number}
[condition][screens.BladeReach]a blade barely covers its images=BladeReach()
[condition][artwork.facts.ToneOfArtwork]a colour has a film=ToneOfArtwork()
[condition][artwork.facts.ToneOfArtwork]- that prints more than {share} of its rectangle=printed.base() > {share}
[condition][artwork.facts.ToneOfArtwork]- that prints less than {share} of its rectangle=printed.base() < {share}
[condition][artwork.facts.ToneOfArtwork]- of which more than {share} is grey=grey.base() > {share}
[condition][artwork.facts.SizeOfArtwork]a film is off at its far edge=SizeOfArtwork(far.mm > 0)
[condition][artwork.facts.SizeOfArtwork]- by more than {length}=far.base() > {length}
[condition][artwork.facts.ArtworksApart]films of one design differ in size=ArtworksApart()
[condition][artwork.facts.ArtworksApart]- by more than {length}=by.base() > {length}
[condition][artwork.facts.StatedPrint]the plan states a printed area beside a film=StatedPrint()
[condition][artwork.facts.StatedPrint]- that is off by more than {share}=off.base() > {share}

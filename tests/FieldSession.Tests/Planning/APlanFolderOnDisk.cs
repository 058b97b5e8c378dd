using FieldSession.Store.Planning;

namespace FieldSession.Tests.Planning;

public sealed class APlanFolderOnDisk : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldsession-plan").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_folder_gives_the_name_and_both_files_are_read()
    {
        Write("specs = 2\norder = \"R 1 R 1 R\""u8, "segment,kind,speed_kmh,length_m\nÅdal,smooth,80,900\n"u8);
        PlanReading reading = PlanFolder.Read(_folder + Path.DirectorySeparatorChar);
        Assert.Equal(Path.GetFileName(_folder), reading.Plan!.StudyName);
        Assert.Equal("Ådal", reading.Plan.Route[0].Name);
    }

    [Fact]
    public void A_missing_folder_and_both_missing_files_are_named()
    {
        Assert.Contains("no such folder", Assert.Single(PlanFolder.Read(Path.Combine(_folder, "none")).Problems).What);
        Assert.Equal(["plan.toml", "route.csv"], PlanFolder.Read(_folder).Problems.Select(problem => problem.File));
        Assert.Null(PlanFolder.Read(_folder).Plan);
    }

    [Fact]
    public void Text_that_is_not_UTF_8_is_refused_in_its_line()
    {
        Write([.. "specs = 2\nstudy = \""u8, 0xC3, 0x28, (byte)'"'], "segment,kind,speed_kmh,length_m\nA,smooth,80,900\n"u8);
        PlanProblem problem = Assert.Single(PlanFolder.Read(_folder).Problems);
        Assert.Equal(("plan.toml", 2), (problem.File, problem.Line));
        Assert.Contains("UTF-8", problem.What);
    }

    [Fact]
    public void A_file_of_more_than_five_megabytes_is_refused()
    {
        byte[] huge = new byte[(5 * 1024 * 1024) + 1];
        Array.Fill(huge, (byte)'\n');
        Write("specs = 2\norder = \"R 1 R 1 R\""u8, huge);
        Assert.Contains("5 MiB", Assert.Single(PlanFolder.Read(_folder).Problems).What);
    }

    private void Write(ReadOnlySpan<byte> plan, ReadOnlySpan<byte> route)
    {
        File.WriteAllBytes(Path.Combine(_folder, "plan.toml"), plan);
        File.WriteAllBytes(Path.Combine(_folder, "route.csv"), route);
    }
}
